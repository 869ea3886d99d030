package etamine.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * The assembled suite on a generated book: loading it, opening it, the first reckoning, and the time from changing one
 * price in the book to the new cost of a plate.
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
