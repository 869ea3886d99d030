package etamine.ingredients.ui.internal;

import etamine.ingredients.Ingredient;
import etamine.ingredients.YieldRecord;
import etamine.ingredients.YieldTest;
import etamine.ingredients.YieldTest.Kind;
import etamine.kitchen.item.Preparation;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The yield tests of all preparations as rows, and back. */
final class TestText {
    static final List<String> KINDS = List.of("trim", "cooking");
    private static final int PREPARATION = 0;
    private static final int DATE = 1;
    private static final int KIND = 2;
    private static final int IN = 3;
    private static final int OUT = 4;
    private static final int BY = 5;
    private static final int NOTE = 6;

    private TestText() {}

    /**
     * Where a row of the grid stands in the ingredient.
     *
     * @param preparation whose test it is
     * @param test its place among the preparation's tests
     */
    record Place(String preparation, int test) {}

    static List<Place> places(Ingredient ingredient) {
        List<Place> places = new ArrayList<>();
        for (Preparation preparation : ingredient.item().preparations()) {
            int tests = ingredient.yieldOf(preparation.name()).tests().size();
            for (int i = 0; i < tests; i++) {
                places.add(new Place(preparation.name(), i));
            }
        }
        return places;
    }

    static List<List<String>> rows(Ingredient ingredient) {
        return places(ingredient).stream()
                .map(place -> row(
                        place.preparation,
                        ingredient.yieldOf(place.preparation).tests().get(place.test)))
                .toList();
    }

    private static List<String> row(String preparation, YieldTest test) {
        return List.of(
                preparation,
                test.date().toString(),
                KINDS.get(test.kind().ordinal()),
                QuantityText.formatExact(test.in()),
                QuantityText.formatExact(test.out()),
                TableText.percent(test.yield()) + " %" + (test.accepted() ? ", accepted" : ""),
                test.by(),
                test.note());
    }

    /** Reads one row of the typed cells: preparation, day, kind, in, out, who, note; emptied, the test goes. */
    static Attempt row(Ingredient shown, int row, List<String> cells, LocalDate today) {
        List<Place> places = places(shown);
        Optional<Place> old = row < places.size() ? Optional.of(places.get(row)) : Optional.empty();
        if (cells.stream().allMatch(String::isEmpty)) {
            return new Attempt.Edit(
                    ingredient -> old.map(place -> without(ingredient, place)).orElse(ingredient));
        }
        String preparation = cells.get(PREPARATION);
        if (shown.item().preparation(preparation).isEmpty()) {
            return new Attempt.Bad(
                    shown.item().preparations().isEmpty()
                            ? "Write a preparation first, on the page before."
                            : "Name one of its preparations: " + String.join("; ", preparations(shown, "")) + ".");
        }
        try {
            YieldTest test = test(cells, today, old.map(place -> test(shown, place)));
            return new Attempt.Edit(ingredient -> with(ingredient, old, preparation, test));
        } catch (MeasureException unclear) {
            return new Attempt.Bad(unclear.getMessage());
        }
    }

    static List<String> preparations(Ingredient ingredient, String typed) {
        return ingredient.item().preparations().stream()
                .map(Preparation::name)
                .filter(name -> name.toLowerCase(Locale.ROOT).startsWith(typed.toLowerCase(Locale.ROOT)))
                .toList();
    }

    private static YieldTest test(Ingredient ingredient, Place place) {
        return ingredient.yieldOf(place.preparation).tests().get(place.test);
    }

    private static YieldTest test(List<String> cells, LocalDate today, Optional<YieldTest> old) {
        if (cells.get(IN).isEmpty() || cells.get(OUT).isEmpty()) {
            throw new MeasureException("Write what went in and what came out, such as 1 kg and 800 g.");
        }
        Quantity in = QuantityText.parse(cells.get(IN));
        Quantity out = QuantityText.parse(cells.get(OUT));
        if (in.signum() <= 0 || out.signum() <= 0 || !in.unit().isLike(out.unit())) {
            throw new MeasureException("Write two weights of more than zero, such as 1 kg and 800 g.");
        }
        return new YieldTest(
                day(cells.get(DATE), today),
                cells.get(BY),
                kind(cells.get(KIND)),
                in,
                out,
                cells.get(NOTE),
                old.filter(was -> was.in().equals(in) && was.out().equals(out))
                        .map(YieldTest::accepted)
                        .orElse(false));
    }

    private static LocalDate day(String text, LocalDate today) {
        try {
            return text.isEmpty() ? today : LocalDate.parse(text);
        } catch (DateTimeException unreadable) {
            throw new MeasureException("Write the day as " + today + ", or nothing for today.");
        }
    }

    private static Kind kind(String text) {
        String typed = text.toLowerCase(Locale.ROOT);
        return Stream.of(Kind.values())
                .filter(kind -> KINDS.get(kind.ordinal()).startsWith(typed))
                .findFirst()
                .orElseThrow(() -> new MeasureException("Write trim or cooking."));
    }

    private static Ingredient without(Ingredient ingredient, Place place) {
        YieldRecord record = ingredient.yieldOf(place.preparation);
        if (place.test >= record.tests().size()) {
            return ingredient;
        }
        List<YieldTest> tests = new ArrayList<>(record.tests());
        tests.remove(place.test);
        return ingredient.withYield(place.preparation, record.withTests(tests));
    }

    private static Ingredient with(Ingredient ingredient, Optional<Place> old, String preparation, YieldTest test) {
        boolean stays = old.filter(place -> place.preparation.equals(preparation)
                        && place.test < ingredient.yieldOf(preparation).tests().size())
                .isPresent();
        Ingredient before = stays
                ? ingredient
                : old.map(place -> without(ingredient, place)).orElse(ingredient);
        YieldRecord record = before.yieldOf(preparation);
        List<YieldTest> tests = new ArrayList<>(record.tests());
        if (stays) {
            tests.set(old.orElseThrow().test, test);
        } else {
            tests.add(test);
        }
        return before.withYield(preparation, record.withTests(tests));
    }
}
