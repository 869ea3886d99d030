package etamine.ingredients.internal;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.ingredients.Ingredient;
import etamine.ingredients.YieldRecord;
import etamine.ingredients.YieldTest;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.yield.Spread;
import etamine.measures.Ratio;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The yield tests of an ingredient, for machines and for people. */
final class YieldReport {
    private static final int PLACES = 6;

    private YieldReport() {}

    static Report of(Ingredient ingredient, String only) {
        List<Map<String, Object>> json = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        for (Preparation preparation : ingredient.item().preparations()) {
            if (only.isEmpty() || only.equals(preparation.name())) {
                YieldRecord record = ingredient.yieldOf(preparation.name());
                json.add(json(preparation, record));
                lines.add(ingredient.item().name() + ", " + preparation.name() + ": working yield "
                        + percent(preparation.yield())
                        + (record.note().isEmpty() ? "" : " (" + record.note() + ")"));
                lines.addAll(lines(record));
            }
        }
        if (json.isEmpty()) {
            lines.add(ingredient.item().name() + " has no such preparation.");
        }
        Map<String, Object> whole = new LinkedHashMap<>();
        whole.put("item", ingredient.id());
        whole.put("preparations", json);
        return Report.done(whole, lines);
    }

    private static List<String> lines(YieldRecord record) {
        TextTable table = new TextTable(">no.", "date", "kind", "by", ">in", ">out", ">yield", "accepted", "note");
        for (int i = 0; i < record.tests().size(); i++) {
            YieldTest test = record.tests().get(i);
            table.row(
                    Integer.toString(i + 1),
                    test.date().toString(),
                    kind(test.kind()),
                    test.by(),
                    test.in().toString(),
                    test.out().toString(),
                    percent(test.yield()),
                    test.accepted() ? "yes" : "",
                    test.note());
        }
        List<String> lines = new ArrayList<>(table.lines());
        for (YieldTest.Kind kind : YieldTest.Kind.values()) {
            record.spread(kind).ifPresent(spread -> lines.add(line(kind, spread)));
        }
        return lines;
    }

    private static String line(YieldTest.Kind kind, Spread spread) {
        String apart = spread.deviation()
                .map(deviation -> ", standard deviation " + percent(deviation) + ", from " + percent(spread.least())
                        + " to " + percent(spread.greatest()))
                .orElse("");
        return "  " + kind(kind) + ": mean " + percent(spread.mean()) + " of " + spread.n()
                + (spread.n() == 1 ? " test" : " tests") + apart;
    }

    private static Map<String, Object> json(Preparation preparation, YieldRecord record) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("name", preparation.name());
        json.put("yield", preparation.yield().toString());
        json.put("note", record.note());
        json.put("tests", record.tests().stream().map(YieldReport::json).toList());
        Map<String, Object> spreads = new LinkedHashMap<>();
        for (YieldTest.Kind kind : YieldTest.Kind.values()) {
            record.spread(kind).ifPresent(spread -> spreads.put(kind(kind), json(spread)));
        }
        json.put("spread", spreads);
        json.put(
                "history",
                record.history().stream()
                        .map(change -> Map.of(
                                "date",
                                change.date().toString(),
                                "by",
                                change.by(),
                                "yield",
                                change.yield().toString(),
                                "source",
                                change.source()))
                        .toList());
        return json;
    }

    private static Map<String, Object> json(YieldTest test) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("date", test.date().toString());
        json.put("by", test.by());
        json.put("kind", kind(test.kind()));
        json.put("in", test.in().toString());
        json.put("out", test.out().toString());
        json.put("yield", test.yield().toString());
        json.put("note", test.note());
        json.put("accepted", test.accepted());
        return json;
    }

    private static Map<String, Object> json(Spread spread) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("n", spread.n());
        json.put("mean", spread.mean().toString());
        spread.deviation().ifPresent(deviation -> json.put("deviation", decimal(deviation, PLACES)));
        json.put("least", spread.least().toString());
        json.put("greatest", spread.greatest().toString());
        return json;
    }

    private static String kind(YieldTest.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    private static String percent(Ratio share) {
        return decimal(share.times(Ratio.of(100)), 2) + " %";
    }

    private static String decimal(Ratio number, int places) {
        return number.toDecimal(places, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
