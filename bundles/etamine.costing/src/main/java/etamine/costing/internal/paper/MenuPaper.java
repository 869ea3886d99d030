package etamine.costing.internal.paper;

import etamine.costing.MenuReport;
import etamine.costing.internal.words.Amounts;
import etamine.documents.Block;
import etamine.documents.Block.Facts.Pair;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A menu analysis on paper.
 *
 * @param report the analysis
 */
record MenuPaper(MenuReport report) {

    /** An item, its place in the group it is compared in, and that group. */
    record Row(String group, int place, MenuReport.Item item) {}

    CostTable<Row> table() {
        List<Row> rows = new ArrayList<>();
        report.groups().forEach(group -> rows.addAll(rows(group)));
        return columns(CostTable.of(rows).with("Compared in", 3, Row::group));
    }

    private static List<Row> rows(MenuReport.Group group) {
        List<Row> rows = new ArrayList<>();
        group.items().forEach(item -> rows.add(new Row(group.name(), rows.size() + 1, item)));
        return rows;
    }

    private static CostTable<Row> columns(CostTable<Row> table) {
        return table.with("No.", 1, row -> String.valueOf(row.place()))
                .with("Item", 8, row -> name(row.item()))
                .with("Sold", 2, row -> row.item().sold())
                .with("Share %", 2, row -> row.item().sharePercent())
                .with("Cost", 3, row -> row.item().cost())
                .with("Price net", 3, row -> row.item().price())
                .with("Leaves", 3, row -> row.item().contribution())
                .with("Cost in all", 3, row -> row.item().totalCost())
                .with("Net sales", 3, row -> row.item().totalRevenue())
                .with("Leaves in all", 3, row -> row.item().totalContribution())
                .with("Margin", 3, row -> level(row.item().highMargin()))
                .with("Popularity", 4, row -> level(row.item().popular()))
                .with("Class", 4, row -> row.item().standing().name().toLowerCase(Locale.ROOT));
    }

    private static String name(MenuReport.Item item) {
        return item.lowerBound() ? item.name() + " (cost at least that)" : item.name();
    }

    private static String level(boolean high) {
        return high ? "high" : "low";
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        for (MenuReport.Group group : report.groups()) {
            Block heading = new Block.Heading(group.name());
            blocks.add(new Block.Together(List.of(heading, new MenuPlot(group).drawing())));
            blocks.add(columns(CostTable.of(rows(group))).grid());
            blocks.add(new Block.Facts(facts(group)));
        }
        report.leftOut()
                .forEach(left -> blocks.add(
                        new Block.Text("Left out: " + left.recipe() + ", " + left.sold() + " sold. " + left.why())));
        report.notes()
                .forEach(note ->
                        blocks.add(note.equals(MenuReport.CAUTION) ? new Block.Caution(note) : new Block.Text(note)));
        return blocks;
    }

    private static List<Pair> facts(MenuReport.Group group) {
        List<Pair> facts = new ArrayList<>();
        facts.add(new Pair("Portions sold", String.valueOf(group.sold())));
        facts.add(new Pair("A margin is high above", Amounts.text(group.averageContribution())));
        facts.add(new Pair("Popularity is high above", group.popularityCutPercent() + " % of portions"));
        facts.add(new Pair("Net sales", Amounts.text(group.totalRevenue())));
        facts.add(new Pair("Cost", Amounts.text(group.totalCost())));
        facts.add(new Pair("Contribution", Amounts.text(group.totalContribution())));
        group.foodCostPercent()
                .ifPresent(percent -> facts.add(new Pair("Food cost weighted by the mix", percent + " %")));
        return facts;
    }
}
