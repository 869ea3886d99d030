package etamine.ingredients.ui.internal;

import etamine.ingredients.Ingredient;
import etamine.ingredients.YieldChange;
import etamine.ingredients.YieldRecord;
import etamine.ingredients.YieldTest.Kind;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.yield.Spread;
import java.util.ArrayList;
import java.util.List;

/** What the yield tests of an ingredient say together, a row for each preparation and kind. */
final class SpreadText {
    private SpreadText() {}

    /**
     * One row.
     *
     * @param key what it is about
     * @param preparation the preparation
     * @param what the working yield, or the kind of test
     * @param yield the yield, in percent
     * @param spread how far the tests lie apart; empty for one
     * @param source where it comes from
     */
    record Row(String key, String preparation, String what, String yield, String spread, String source) {}

    static List<Row> rows(Ingredient ingredient) {
        List<Row> rows = new ArrayList<>();
        for (Preparation preparation : ingredient.item().preparations()) {
            String name = preparation.name();
            YieldRecord record = ingredient.yieldOf(name);
            String source = record.note().isEmpty() ? "written" : record.note();
            rows.add(new Row(name, name, "working yield", percent(preparation), "", source));
            for (Kind kind : Kind.values()) {
                record.spread(kind).ifPresent(spread -> rows.add(row(name, kind, spread)));
            }
            for (int i = record.history().size() - 1; i >= 0; i--) {
                rows.add(past(name, i, record.history().get(i)));
            }
        }
        return rows;
    }

    private static String percent(Preparation preparation) {
        return TableText.percent(preparation.yield()) + " %";
    }

    private static Row row(String name, Kind kind, Spread spread) {
        String apart = spread.deviation()
                .map(deviation -> "± " + TableText.percent(deviation) + ", " + TableText.percent(spread.least())
                        + " to " + TableText.percent(spread.greatest()) + " %")
                .orElse("");
        String word = TestText.KINDS.get(kind.ordinal());
        String tests = spread.n() == 1 ? "1 test" : "mean of " + spread.n() + " tests";
        return new Row(name + "/" + word, name, word, TableText.percent(spread.mean()) + " %", apart, tests);
    }

    private static Row past(String name, int place, YieldChange change) {
        String who = change.by().isEmpty() ? "" : " by " + change.by();
        return new Row(
                name + "/" + place,
                name,
                "accepted " + change.date() + who,
                TableText.percent(change.yield()) + " %",
                "",
                change.source());
    }
}
