package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.costing.Days;
import etamine.costing.MenuAnalysis;
import etamine.costing.MenuClass;
import etamine.costing.MenuReport;
import etamine.widgets.PlotShape;
import etamine.widgets.ScatterPlot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The menu by how its items sell and what they leave, as a plot, rows and sentences. */
final class MenuModel {
    private final CostingParts parts;
    private final Figures figures;

    MenuModel(CostingParts parts) {
        this.parts = parts;
        this.figures = parts.figures();
    }

    LocalDate today() {
        return parts.kitchen().today();
    }

    /** The days with sales; the last four weeks where there are none. */
    Days start() {
        return parts.menu().sold().orElseGet(() -> new Days(today().minusWeeks(4), today()));
    }

    /** Reads the sales; call it in the background. */
    MenuReport read(Days days, boolean together) {
        MenuAnalysis.Comparison how = together ? MenuAnalysis.Comparison.TOGETHER : MenuAnalysis.Comparison.WITHIN_KIND;
        return parts.menu().report(Optional.of(days), how, Set.of());
    }

    /** The points of a group with its two lines. */
    ScatterPlot.Plot plot(MenuReport.Group group) {
        String average = Figures.money(group.averageContribution());
        return new ScatterPlot.Plot(
                "Share of portions sold, %",
                "Contribution of a portion, " + figures.currency(),
                group.items().stream().map(this::dot).toList(),
                Optional.of(new ScatterPlot.Cut(
                        group.popularityCutPercent().doubleValue(),
                        "70\u00a0% of an even share: " + Figures.percent(group.popularityCutPercent()))),
                Optional.of(
                        new ScatterPlot.Cut(group.averageContribution().amount().doubleValue(), "average " + average)),
                Arrays.stream(MenuClass.values()).map(MenuModel::kind).toList());
    }

    private ScatterPlot.Dot dot(MenuReport.Item item) {
        return new ScatterPlot.Dot(
                item.recipe(),
                item.name(),
                item.sharePercent().doubleValue(),
                item.contribution().amount().doubleValue(),
                kind(item.standing()),
                item.sold() + " sold, " + Figures.percent(item.sharePercent()) + ", leaves "
                        + figures.full(item.contribution()));
    }

    private static ScatterPlot.Kind kind(MenuClass standing) {
        int number = standing.ordinal();
        int[] colours = {0, 2, 1, 3};
        return new ScatterPlot.Kind(word(standing), PlotShape.of(number), colours[number]);
    }

    static String word(MenuClass standing) {
        return switch (standing) {
            case STAR -> "star";
            case PLOWHORSE -> "plowhorse";
            case PUZZLE -> "puzzle";
            case DOG -> "dog";
        };
    }

    /** What a class means, in words. */
    static String meaning(MenuReport.Item item) {
        return (item.popular() ? "sells well" : "sells little") + ", leaves " + (item.highMargin() ? "more" : "no more")
                + " than the average";
    }

    /** The group's totals in a sentence. */
    String sentence(MenuReport.Group group) {
        return group.sold() + " portions of " + group.items().size() + " " + named(group) + ": net sales "
                + figures.full(group.totalRevenue()) + ", cost " + Figures.money(group.totalCost())
                + group.foodCostPercent()
                        .map(percent -> " (" + Figures.percent(percent) + " weighted by the mix)")
                        .orElse("")
                + ", contribution " + Figures.money(group.totalContribution()) + ".";
    }

    private static String named(MenuReport.Group group) {
        return group.name().equals("all") ? "items" : group.name();
    }

    /** Why one item stands where it does. */
    Explanation explain(MenuReport.Item item, MenuReport.Group group) {
        List<Explanation> all = new ArrayList<>();
        all.add(Explanation.leaf("Sold", String.valueOf(item.sold()), "of " + group.sold()));
        all.add(Explanation.leaf(
                "Share",
                Figures.percent(item.sharePercent()),
                (item.popular() ? "above" : "not above") + " 70\u00a0% of an even share, "
                        + Figures.percent(group.popularityCutPercent())));
        all.add(Explanation.leaf("Net price", figures.full(item.price()), "without tax"));
        all.add(Explanation.leaf(
                "Cost", figures.full(item.cost()), item.lowerBound() ? "at least; a price is missing" : ""));
        all.add(Explanation.leaf(
                "Contribution",
                figures.full(item.contribution()),
                (item.highMargin() ? "above" : "not above") + " the average, "
                        + figures.full(group.averageContribution())));
        all.add(Explanation.leaf("Contribution of all", figures.full(item.totalContribution()), ""));
        all.add(group.explained());
        return new Explanation(
                item.name(),
                word(item.standing()),
                meaning(item),
                all,
                Optional.of(new Subject("cost", item.recipe())));
    }

    /** What was sold but cannot be compared, what else to know, and always the caution. */
    List<String> notes(MenuReport report) {
        List<String> notes = new ArrayList<>();
        report.leftOut()
                .forEach(left ->
                        notes.add(parts.recipeName(left.recipe()) + ", " + left.sold() + " sold: " + left.why()));
        notes.addAll(report.notes());
        if (!notes.contains(MenuReport.CAUTION)) {
            notes.add(MenuReport.CAUTION);
        }
        return notes;
    }
}
