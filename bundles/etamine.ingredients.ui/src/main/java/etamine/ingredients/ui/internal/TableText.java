package etamine.ingredients.ui.internal;

import etamine.ingredients.Ingredient;
import etamine.ingredients.YieldRecord;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.Equivalence;
import etamine.measures.MeasureException;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The small tables of the form as text, and back. */
final class TableText {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int PLACES = 4;

    private TableText() {}

    static List<List<String>> measures(Item item) {
        return item.measures().stream()
                .map(measure -> List.of(QuantityText.formatExact(measure.of()), QuantityText.formatExact(measure.is())))
                .toList();
    }

    /** Reads one row of measures; empty cells take the row away. */
    static Attempt measure(int row, List<String> cells) {
        if (isEmpty(cells)) {
            return new Attempt.Edit(
                    ingredient -> ingredient.with(item -> item.withMeasures(without(item.measures(), row))));
        }
        if (cells.get(0).isEmpty() || cells.get(1).isEmpty()) {
            return new Attempt.Bad("Write both sides, such as 1 cup and 150 g.");
        }
        try {
            Equivalence measure = new Equivalence(QuantityText.parse(cells.get(0)), QuantityText.parse(cells.get(1)));
            return new Attempt.Edit(
                    ingredient -> ingredient.with(item -> item.withMeasures(with(item.measures(), row, measure))));
        } catch (MeasureException unclear) {
            return new Attempt.Bad(unclear.getMessage());
        }
    }

    static List<List<String>> preparations(Ingredient ingredient) {
        return ingredient.item().preparations().stream()
                .map(preparation -> List.of(
                        preparation.name(),
                        percent(preparation.yield()),
                        preparation.measures().stream().map(TableText::text).collect(Collectors.joining("; ")),
                        ingredient.yieldOf(preparation.name()).note()))
                .toList();
    }

    /** Reads one row of preparations: name, yield in percent, measures, note; empty cells take the row away. */
    static Attempt preparation(int row, List<String> cells) {
        if (isEmpty(cells)) {
            return new Attempt.Edit(ingredient ->
                    ingredient.withPreparations(without(ingredient.item().preparations(), row), ingredient.yields()));
        }
        if (cells.get(0).isEmpty()) {
            return new Attempt.Bad("Name the preparation, such as peeled, large dice.");
        }
        try {
            Ratio yield = share(cells.get(1));
            List<Equivalence> measures = equivalences(cells.get(2));
            return new Attempt.Edit(ingredient -> withPreparation(ingredient, row, cells, yield, measures));
        } catch (MeasureException unclear) {
            return new Attempt.Bad(unclear.getMessage());
        }
    }

    private static Ingredient withPreparation(
            Ingredient ingredient, int row, List<String> cells, Ratio yield, List<Equivalence> measures) {
        Map<String, YieldRecord> records = new HashMap<>(ingredient.yields());
        List<Preparation> old = ingredient.item().preparations();
        boolean shown = row < old.size() && percent(old.get(row).yield()).equals(percent(yield));
        Ratio exact = shown ? old.get(row).yield() : yield;
        YieldRecord record = YieldRecord.NONE;
        if (row < old.size()) {
            record = ingredient.yieldOf(old.get(row).name());
            records.remove(old.get(row).name());
        }
        records.put(cells.get(0), record.withNote(cells.get(3)));
        return ingredient.withPreparations(with(old, row, new Preparation(cells.get(0), exact, measures)), records);
    }

    static String percent(Ratio yield) {
        BigDecimal percent = yield.times(Ratio.of(HUNDRED)).toDecimal(PLACES, RoundingMode.HALF_UP);
        return percent.stripTrailingZeros().toPlainString();
    }

    private static Ratio share(String text) {
        if (text.isEmpty()) {
            return Ratio.ONE;
        }
        Ratio percent = Ratio.parse(text.replace("%", "").replace(',', '.').strip());
        if (percent.signum() <= 0) {
            throw new MeasureException("Write the yield in percent, more than 0, such as 74.");
        }
        return percent.dividedBy(Ratio.of(HUNDRED));
    }

    private static List<Equivalence> equivalences(String text) {
        return Arrays.stream(text.split(";"))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .map(TableText::equivalence)
                .toList();
    }

    private static Equivalence equivalence(String text) {
        String[] sides = text.split("=");
        if (sides.length != 2) {
            throw new MeasureException("Write measures such as 1 cup = 156 g, with a semicolon between them.");
        }
        return new Equivalence(QuantityText.parse(sides[0].strip()), QuantityText.parse(sides[1].strip()));
    }

    private static String text(Equivalence measure) {
        return QuantityText.formatExact(measure.of()) + " = " + QuantityText.formatExact(measure.is());
    }

    private static boolean isEmpty(List<String> cells) {
        return cells.stream().allMatch(String::isEmpty);
    }

    private static <T> List<T> with(List<T> list, int row, T element) {
        List<T> changed = new ArrayList<>(list);
        if (row < changed.size()) {
            changed.set(row, element);
        } else {
            changed.add(element);
        }
        return changed;
    }

    private static <T> List<T> without(List<T> list, int row) {
        List<T> changed = new ArrayList<>(list);
        if (row < changed.size()) {
            changed.remove(row);
        }
        return changed;
    }
}
