package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.costing.Days;
import etamine.costing.Statement;
import etamine.costing.WeekCost;
import etamine.measures.Money;
import etamine.widgets.ScatterPlot;
import etamine.widgets.TimeChart;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What goods sold should have cost against what they did, as rows, a chart and sentences. */
final class StatementModel {
    private static final int WEEKS = 8;
    private final CostingParts parts;
    private final Figures figures;

    StatementModel(CostingParts parts) {
        this.parts = parts;
        this.figures = parts.figures();
    }

    LocalDate today() {
        return parts.kitchen().today();
    }

    /** The four weeks up to yesterday. */
    Days start() {
        return new Days(today().minusWeeks(4), today().minusDays(1));
    }

    /**
     * What was read.
     *
     * @param statement the days asked for
     * @param weeks the weeks up to their last day
     */
    record Found(Statement statement, List<WeekCost> weeks) {}

    /** Reads the shelf and the sales; call it in the background. */
    Found read(Days days) {
        return new Found(parts.statements().of(days), parts.statements().weeks(days.to(), WEEKS));
    }

    /**
     * One step of the statement.
     *
     * @param key which one
     * @param name what it is, with its sign
     * @param amount how much
     * @param sum whether it is a sum of what stands above
     */
    record Step(String key, String name, String amount, boolean sum) {}

    /** The steps from opening stock to the cost of food sold, then what it should have been. */
    List<Step> steps(Statement statement) {
        List<Step> steps = new ArrayList<>();
        statement.actual().ifPresent(actual -> {
            step(steps, "Opening stock", actual.opening(), false);
            step(steps, "+ purchases", actual.purchases(), false);
            step(steps, "= food available", actual.available(), true);
            step(steps, "\u2212 closing stock", actual.closing(), false);
            step(steps, "= food issued", actual.issued(), true);
            step(steps, "+ transfers in", actual.transfersIn(), false);
            step(steps, "\u2212 transfers out", actual.transfersOut(), false);
            step(steps, "\u2212 sold as it is", actual.resold(), false);
            step(steps, "\u2212 given away", actual.promotions(), false);
            step(steps, "= food consumed", actual.consumed(), true);
            step(steps, "\u2212 staff meals", actual.staffMeals(), false);
            step(steps, "= cost of food sold", actual.costOfFoodSold(), true);
            step(steps, "of it written off", actual.wasted(), false);
            step(steps, "of it found missing by counts", actual.countedShort(), false);
        });
        statement.ideal().ifPresent(ideal -> {
            step(steps, "Net sales", ideal.sales(), false);
            step(steps, ideal.lowerBound() ? "Ideal cost, at least" : "Ideal cost", ideal.cost(), true);
        });
        statement.variance().ifPresent(variance -> step(steps, "Cost more than ideal", variance, true));
        return steps;
    }

    private static void step(List<Step> steps, String name, Money amount, boolean sum) {
        steps.add(new Step(name, name, Figures.money(amount), sum));
    }

    /** Actual and ideal food cost in a sentence. */
    String sentence(Statement statement) {
        List<String> said = new ArrayList<>();
        statement.foodCostPercent().ifPresent(percent -> said.add("Food cost was " + Figures.percent(percent)));
        statement.idealPercent().ifPresent(percent -> said.add("it should have been " + Figures.percent(percent)));
        statement.variance().ifPresent(money -> said.add("a difference of " + figures.full(money)));
        if (said.isEmpty()) {
            return "Nothing can be set against anything in these days.";
        }
        return String.join(", ", said) + ".";
    }

    /** Food cost week by week, ideal beside actual, with the kitchen's target. */
    TimeChart.Chart course(List<WeekCost> weeks) {
        List<TimeChart.Line> lines = new ArrayList<>();
        line(lines, "ideal", weeks, WeekCost::idealPercent);
        line(lines, "actual", weeks, WeekCost::actualPercent);
        Optional<ScatterPlot.Cut> target = parts.settings()
                .rules()
                .targetFoodCostPercent()
                .map(percent ->
                        new ScatterPlot.Cut(percent.doubleValue(), "target " + Figures.percentAsWritten(percent)));
        return new TimeChart.Chart("Food cost, % of net sales", lines, target);
    }

    private void line(
            List<TimeChart.Line> lines,
            String name,
            List<WeekCost> weeks,
            Function<WeekCost, Optional<BigDecimal>> figure) {
        List<TimeChart.Spot> spots = new ArrayList<>();
        for (WeekCost week : weeks) {
            figure.apply(week)
                    .ifPresent(percent -> spots.add(new TimeChart.Spot(
                            name + week.days().from(),
                            week.days().from(),
                            percent.doubleValue(),
                            Figures.percent(percent) + ", week from "
                                    + figures.day(week.days().from()))));
        }
        if (!spots.isEmpty()) {
            lines.add(new TimeChart.Line(name, spots, false));
        }
    }

    /** The weeks as a table. */
    record Week(String key, String days, String sales, String ideal, String actual) {}

    List<Week> weeks(List<WeekCost> weeks) {
        return weeks.stream()
                .map(week -> new Week(
                        week.days().toString(),
                        figures.day(week.days().from()),
                        Figures.money(week.sales()),
                        week.idealPercent().map(Figures::percent).orElse(Figures.NONE),
                        week.actualPercent().map(Figures::percent).orElse(Figures.NONE)))
                .toList();
    }

    String quantity(etamine.measures.Quantity quantity) {
        return figures.quantity(quantity);
    }

    /** How one ingredient's variance comes about. */
    Explanation explain(Statement.Variance row) {
        return new Explanation(
                row.name(),
                Figures.change(row.money()) + "\u00a0" + figures.currency(),
                "what it cost more than it should have",
                List.of(
                        Explanation.leaf(
                                "Used", quantity(row.used()), "left the shelf, cost " + figures.full(row.cost())),
                        Explanation.leaf(
                                "Should have been used",
                                quantity(row.should()),
                                row.idealCost()
                                        .map(cost -> "by what was sold, at today's price " + figures.full(cost))
                                        .orElse("by what was sold; no price is known today")),
                        Explanation.leaf("Written off", quantity(row.wasted()), "part of what was used"),
                        Explanation.leaf("By use", Figures.change(row.byUse()), "using more or less, at today's price"),
                        Explanation.leaf(
                                "By price", Figures.change(row.byPrice()), "having paid other prices than today's")),
                Optional.of(new Subject("item", row.item())));
    }
}
