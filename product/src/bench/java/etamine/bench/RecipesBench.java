package etamine.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;

/**
 * What a recipe editor asks of the assembled suite on a generated book, each beside the least that could answer it in the
 * same virtual machine. Every question is asked twice over: as it comes while somebody works, and right after something
 * in the book has changed.
 */
final class RecipesBench implements Bench {
    private static final int ROUNDS = 60;

    private final Path product;
    private int asked;

    RecipesBench(Path product) {
        this.product = product;
    }

    @Override
    public String name() {
        return "recipes";
    }

    /** Something to ask, with the least that could answer it. */
    private record Question(String what, int aim, Callable<Object> answer, Callable<Object> floor) {}

    @Override
    public List<String> measure() throws Exception {
        List<String> lines = new ArrayList<>();
        try (GeneratedBook generated = new GeneratedBook(product)) {
            generated.load();
            for (Question question : questions(generated)) {
                lines.add(steady(question));
                lines.add(afterChange(generated, question));
            }
        }
        return lines;
    }

    private List<Question> questions(GeneratedBook generated) throws Exception {
        Object lines = generated.service("etamine.recipes.UseLines");
        Object search = generated.service("etamine.recipes.RecipeSearch");
        Object rollUp = generated.service("etamine.recipes.AllergenRollUp");
        Object wanted = wanted(search, "wide pan 777");
        String[] names = names();
        String[] texts = texts(generated);
        return List.of(
                new Question("a keystroke read and completed", 50, () -> keystroke(lines), () -> scan(names, "ent 49")),
                new Question("a recipe opened", 150, () -> open(generated), () -> document(generated)),
                new Question("find", 30, () -> GeneratedBook.call(search, "find", wanted), () -> scan(texts, "777")),
                new Question(
                        "allergens of the whole book",
                        50,
                        () -> GeneratedBook.call(rollUp, "recipes"),
                        () -> bits(generated.items())));
    }

    private Object keystroke(Object lines) throws Exception {
        String typed = "1/2 cup ingredient 4" + asked++ % 10;
        GeneratedBook.call(lines, "read", typed + "99, trimed");
        return GeneratedBook.call(lines, "complete", typed, 20);
    }

    private String id() {
        return "r" + asked++ * 37 % GeneratedBook.RECIPES;
    }

    /** The recipe, its problems, cost, balance, allergens and lines as text. */
    private Object open(GeneratedBook generated) throws Exception {
        String id = id();
        Object recipes = generated.service("etamine.kitchen.recipe.Recipes");
        Object recipe = ((Optional<?>) GeneratedBook.call(recipes, "find", id)).orElseThrow();
        Object lines = generated.service("etamine.recipes.UseLines");
        for (Object use : (List<?>) GeneratedBook.call(recipe, "uses")) {
            GeneratedBook.call(lines, "write", use);
        }
        GeneratedBook.call(generated.service("etamine.recipes.Balances"), "of", recipe);
        GeneratedBook.call(generated.service("etamine.recipes.Trials"), "trust", recipe);
        GeneratedBook.call(generated.service("etamine.recipes.AllergenRollUp"), "of", recipe);
        GeneratedBook.call(generated.service("etamine.kitchen.cost.Costs"), "recipe", id);
        return GeneratedBook.call(generated.service("etamine.recipes.RecipeBook"), "problems", recipe);
    }

    private Object document(GeneratedBook generated) throws Exception {
        Object shelf = GeneratedBook.call(generated.service("etamine.storage.Book"), "shelf", "recipes");
        return GeneratedBook.call(shelf, "get", id());
    }

    private static Object wanted(Object search, String text) throws Exception {
        Class<?> contract = search.getClass().getClassLoader().loadClass("etamine.recipes.RecipeSearch$Wanted");
        return contract.getMethod("words", String.class, int.class).invoke(null, text, 50);
    }

    private static Object scan(String[] texts, String word) {
        return Arrays.stream(texts).filter(text -> text.contains(word)).count();
    }

    private static String[] names() {
        String[] names = new String[GeneratedBook.BOUGHT + GeneratedBook.RECIPES];
        Arrays.setAll(
                names, i -> i < GeneratedBook.BOUGHT ? "ingredient " + i : "recipe " + (i - GeneratedBook.BOUGHT));
        return names;
    }

    private static String[] texts(GeneratedBook generated) {
        String[] texts = new String[GeneratedBook.RECIPES];
        Arrays.setAll(texts, i -> generated.recipe(i, ""));
        return texts;
    }

    /** The roll-up itself over primitive arrays: one bit for each allergen. */
    private static Object bits(int[] items) {
        long[] bits = new long[GeneratedBook.BOUGHT + GeneratedBook.RECIPES];
        Arrays.setAll(bits, i -> i < GeneratedBook.BOUGHT && i % 9 == 0 ? 1L << i % 7 : 0);
        for (int at = 0; at < items.length; at++) {
            bits[GeneratedBook.BOUGHT + at / GeneratedBook.LINES] |= bits[items[at]];
        }
        return bits[bits.length - 1];
    }

    private static String steady(Question question) throws Exception {
        double[] answer = new double[ROUNDS];
        double[] floor = new double[ROUNDS];
        for (int round = -ROUNDS; round < ROUNDS; round++) {
            int slot = Math.max(0, round);
            answer[slot] = millis(question.answer);
            floor[slot] = millis(question.floor);
        }
        return line(question, "", answer, floor);
    }

    private String afterChange(GeneratedBook generated, Question question) throws Exception {
        double[] answer = new double[ROUNDS / 2];
        double[] floor = new double[ROUNDS / 2];
        for (int round = -10; round < answer.length; round++) {
            int slot = Math.max(0, round);
            int recipe = asked++ * 53 % GeneratedBook.RECIPES;
            generated.save("recipes", "r" + recipe, generated.changed(recipe, round + 10));
            answer[slot] = millis(question.answer);
            floor[slot] = millis(question.floor);
        }
        return line(question, ", a recipe having just changed", answer, floor);
    }

    private static String line(Question question, String when, double[] answer, double[] floor) {
        Arrays.sort(answer);
        Arrays.sort(floor);
        return String.format(
                Locale.ROOT,
                "%s%s: median %.2f ms, worst %.1f ms (aim: %d); least that could answer: %.3f ms",
                question.what,
                when,
                answer[answer.length / 2],
                answer[answer.length - 1],
                question.aim,
                floor[floor.length / 2]);
    }

    private static double millis(Callable<Object> work) throws Exception {
        long start = System.nanoTime();
        Object result = work.call();
        long end = System.nanoTime();
        if (result == null || result instanceof Map<?, ?> map && map.isEmpty()) {
            throw new IllegalStateException("Nothing was answered.");
        }
        return (end - start) / 1e6;
    }
}
