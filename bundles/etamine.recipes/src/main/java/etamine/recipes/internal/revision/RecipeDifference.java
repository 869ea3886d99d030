package etamine.recipes.internal.revision;

import etamine.kitchen.recipe.BatchTest;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.PairedDrink;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.recipes.Difference;
import etamine.recipes.Difference.What;
import etamine.recipes.internal.form.RecipeForm;
import etamine.recipes.internal.text.LineWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Compares two states of a recipe in the order of the card. Used once. */
final class RecipeDifference {
    private final LineWords words;
    private final Recipe older;
    private final Recipe newer;
    private final List<Difference> all = new ArrayList<>();

    RecipeDifference(LineWords words, Recipe older, Recipe newer) {
        this.words = words;
        this.older = older;
        this.newer = newer;
    }

    List<Difference> all() {
        text("Name", Recipe::name);
        fact("Kind", recipe -> RecipeForm.word(recipe.kind()));
        lines(
                Recipe::uses,
                new Line<>(Use::item, use -> words.name(use.item()), words::use, RecipeDifference::onlyAmount));
        lines(
                Recipe::makes,
                new Line<>(Make::item, make -> words.name(make.item()), words::make, RecipeDifference::onlyAmount));
        fact("Portion", recipe -> shown(recipe.portion()));
        fact("Keeps", recipe -> shown(recipe.keeps()));
        fact("Made in whole batches", recipe -> recipe.making().whole() ? "yes" : "");
        fact("Water taken up", recipe -> shown(recipe.making().absorbs()));
        fact("Comes down to", recipe -> shown(recipe.making().reducesTo()));
        fact("Station", recipe -> recipe.making().station());
        steps();
        fact("On the menu", recipe -> recipe.menu().map(RecipeDifference::menu).orElse(""));
        lines(
                Recipe::drinks,
                new Line<>(
                        PairedDrink::recipe,
                        drink -> "Drink",
                        drink -> drink.recipe() + " " + drink.level(),
                        (a, b) -> false));
        fact("Good tries", recipe -> Integer.toString(recipe.tested()));
        fact("Put away", recipe -> recipe.standing().archived() ? "yes" : "");
        lines(
                recipe -> recipe.standing().tests(),
                new Line<>(test -> test.date() + test.by(), test -> "Test", RecipeDifference::test, (a, b) -> false));
        text("Notes", Recipe::notes);
        fact("Photo", recipe -> shown(recipe.photo()));
        return List.copyOf(all);
    }

    /** How the lines of one list are told apart, called and shown. */
    private record Line<T>(
            Function<T, String> key, Function<T, String> title, Function<T, String> text, SameBut<T> onlyAmount) {}

    /** Whether nothing but the amount of a line has changed. */
    @FunctionalInterface
    private interface SameBut<T> {
        boolean test(T older, T newer);
    }

    private <T> void lines(Function<Recipe, List<T>> list, Line<T> line) {
        for (PairedLines.Pair<T> pair : PairedLines.of(list.apply(older), list.apply(newer), line.key)) {
            T any = pair.newer().or(pair::older).orElseThrow();
            String before = pair.older().map(line.text).orElse("");
            String after = pair.newer().map(line.text).orElse("");
            if (!before.equals(after)) {
                add(what(pair, line), line.title.apply(any), before, after);
            } else if (pair.moved()) {
                add(What.MOVED, line.title.apply(any), before, after);
            }
        }
    }

    private static <T> What what(PairedLines.Pair<T> pair, Line<T> line) {
        if (pair.older().isEmpty()) {
            return What.ADDED;
        }
        if (pair.newer().isEmpty()) {
            return What.REMOVED;
        }
        return line.onlyAmount.test(pair.older().get(), pair.newer().get()) ? What.AMOUNT : What.CHANGED;
    }

    private static boolean onlyAmount(Use older, Use newer) {
        return older.withQuantity(newer.quantity()).equals(newer);
    }

    private static boolean onlyAmount(Make older, Make newer) {
        return older.withQuantity(newer.quantity()).equals(newer);
    }

    private void steps() {
        for (PairedLines.Pair<Step> pair : PairedLines.of(older.steps(), newer.steps(), Step::id)) {
            String where = "Step " + pair.newer().or(pair::older).orElseThrow().id();
            if (pair.older().isEmpty() || pair.newer().isEmpty()) {
                What what = pair.older().isEmpty() ? What.ADDED : What.REMOVED;
                add(
                        what,
                        where,
                        pair.older().map(Step::text).orElse(""),
                        pair.newer().map(Step::text).orElse(""));
                continue;
            }
            text(where, pair.older().get().text(), pair.newer().get().text());
            String before = LineWords.facts(pair.older().get());
            String after = LineWords.facts(pair.newer().get());
            if (!before.equals(after)) {
                add(What.CHANGED, where, before, after);
            } else if (pair.moved()) {
                add(What.MOVED, where, "", "");
            }
        }
    }

    private void fact(String where, Function<Recipe, String> fact) {
        String before = fact.apply(older);
        String after = fact.apply(newer);
        if (!before.equals(after)) {
            add(What.CHANGED, where, before, after);
        }
    }

    private void text(String where, Function<Recipe, String> text) {
        text(where, text.apply(older), text.apply(newer));
    }

    private void text(String where, String before, String after) {
        if (!before.equals(after)) {
            all.add(new Difference(What.TEXT, where, before, after, WordDifference.between(before, after)));
        }
    }

    private void add(What what, String where, String before, String after) {
        all.add(new Difference(what, where, before, after, List.of()));
    }

    private static String shown(Optional<?> value) {
        return value.map(Object::toString).orElse("");
    }

    private static String menu(MenuPrice menu) {
        StringBuilder text = new StringBuilder(menu.price().toPlainString())
                .append(", tax ")
                .append(menu.taxPercent().toPlainString())
                .append(" %");
        text.append(", too small to measure ")
                .append(menu.qFactorPercent().toPlainString())
                .append(" %");
        text.append(", with every plate ").append(menu.qFactorAmount().toPlainString());
        text.append(", packaging ").append(menu.packaging().toPlainString());
        menu.targetFoodCostPercent()
                .ifPresent(target ->
                        text.append(", food cost up to ").append(target).append(" %"));
        return text.toString();
    }

    private static String test(BatchTest test) {
        StringBuilder text = new StringBuilder()
                .append(test.date())
                .append(": ")
                .append(test.in())
                .append(" gave ");
        test.out()
                .forEach(out -> text.append(out.quantity())
                        .append(' ')
                        .append(out.item())
                        .append(", "));
        return text.append(test.accepted() ? "accepted" : "not accepted").toString();
    }
}
