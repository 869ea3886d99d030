package etamine.bench;

import java.lang.reflect.Method;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * The assembled suite on a generated book: loading it, opening it, the first reckoning, the time from changing one price
 * in the book to the new cost of a plate, and from a keystroke on a slider to the new figures of all plates.
 */
final class BookBench implements Bench {
    private static final int CHANGES = 40;

    private final Path product;

    BookBench(Path product) {
        this.product = product;
    }

    @Override
    public String name() {
        return "book";
    }

    @Override
    public List<String> measure() throws Exception {
        List<String> lines = new ArrayList<>();
        try (GeneratedBook generated = new GeneratedBook(product)) {
            lines.add(String.format(Locale.ROOT, "file: %.1f MB", Files.size(generated.file()) / 1e6));
            long start = System.nanoTime();
            generated.load();
            lines.add(String.format(Locale.ROOT, "load into an empty book: %.1f s", since(start) / 1000));
            start = System.nanoTime();
            generated.reopen();
            lines.add(String.format(Locale.ROOT, "open, all services up: %.0f ms", since(start)));
            start = System.nanoTime();
            cost(generated);
            lines.add(String.format(Locale.ROOT, "first reckoning of the whole book: %.0f ms", since(start)));
            lines.add(change(generated));
            lines.add(slide(generated));
        }
        return lines;
    }

    private static String change(GeneratedBook generated) throws Exception {
        List<Double> write = new ArrayList<>();
        List<Double> reckon = new ArrayList<>();
        for (int i = 0; i < CHANGES; i++) {
            String entry = GeneratedBook.ingredient(i, "9." + (10 + i));
            long start = System.nanoTime();
            generated.save("ingredients", "i" + i, entry);
            write.add(since(start));
            start = System.nanoTime();
            cost(generated);
            reckon.add(since(start));
        }
        Collections.sort(write);
        Collections.sort(reckon);
        return String.format(
                Locale.ROOT,
                "one price changed: durable in median %.1f ms, whole book reckoned anew and a plate's cost read in"
                        + " median %.1f ms (worst %.1f ms)",
                write.get(CHANGES / 2),
                reckon.get(CHANGES / 2),
                reckon.get(CHANGES - 1));
    }

    /** A slider on the price of one item: from the keystroke to the new figures of every plate. */
    private static String slide(GeneratedBook generated) throws Exception {
        Object experiments = generated.service("etamine.costing.Experiments");
        ClassLoader loader = experiments.getClass().getClassLoader();
        Object none =
                loader.loadClass("etamine.costing.Experiment").getMethod("none").invoke(null);
        Method by = loader.loadClass("etamine.costing.PriceChange").getMethod("by", BigDecimal.class);
        List<Double> first = new ArrayList<>();
        List<Double> later = new ArrayList<>();
        int moved = 0;
        for (int i = 0; i < 4 * CHANGES; i++) {
            long start = System.nanoTime();
            Object change = by.invoke(null, new BigDecimal(1 + i % 30));
            Object experiment = GeneratedBook.call(none, "withPrice", "i" + i % 7, change);
            Object trial = GeneratedBook.call(experiments, "reckon", experiment);
            (i < CHANGES ? first : later).add(since(start));
            moved = Math.max(moved, ((List<?>) GeneratedBook.call(trial, "moved")).size());
        }
        Collections.sort(first);
        Collections.sort(later);
        return String.format(
                Locale.ROOT,
                "one keystroke on a price slider, %d plates of which up to %d move: median %.1f ms, worst %.1f ms"
                        + " (the first %d: median %.1f ms, worst %.1f ms)",
                GeneratedBook.RECIPES / GeneratedBook.LEVELS,
                moved,
                later.get(later.size() / 2),
                later.get(later.size() - 1),
                CHANGES,
                first.get(CHANGES / 2),
                first.get(CHANGES - 1));
    }

    private static void cost(GeneratedBook generated) throws Exception {
        Object costs = generated.service("etamine.kitchen.cost.Costs");
        Object cost = GeneratedBook.call(costs, "recipe", "r" + (GeneratedBook.RECIPES - 1));
        if (!cost.toString().startsWith("Optional[")) {
            throw new IllegalStateException("The generated plate has no cost.");
        }
    }

    private static double since(long start) {
        return (System.nanoTime() - start) / 1e6;
    }
}
