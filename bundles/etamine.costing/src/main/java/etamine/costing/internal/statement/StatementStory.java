package etamine.costing.internal.statement;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.costing.Statement;
import etamine.costing.internal.words.Amounts;
import etamine.measures.MeasureStyle;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tells how a statement's figures come about, in the steps of P. R. Dittmer and J. D. Keefe, ch. 8.
 *
 * @param style how quantities are shown
 */
record StatementStory(MeasureStyle style) {
    /** A statement that is not told yet. */
    static final Explanation NOTHING = Explanation.of("Statement", "", List.of());

    private static final int VARIANCES = 12;

    Statement told(Statement statement) {
        return new Statement(
                statement.days(),
                statement.actual(),
                statement.ideal(),
                statement.variances(),
                statement.notes(),
                story(statement));
    }

    private Explanation story(Statement statement) {
        List<Explanation> parts = new ArrayList<>();
        statement.actual().ifPresent(actual -> parts.add(actual(actual)));
        statement.ideal().ifPresent(ideal -> parts.add(ideal(ideal)));
        statement.variance().ifPresent(whole -> parts.add(variance(statement, whole)));
        String value = statement.variance().map(Amounts::text).orElse("");
        return Explanation.of("Statement of " + statement.days(), value, parts);
    }

    private static Explanation actual(Statement.Actual actual) {
        return Explanation.of(
                "Cost of food sold",
                Amounts.text(actual.costOfFoodSold()),
                List.of(
                        line("Opening stock", actual.opening(), "lots there, at what they cost"),
                        line("Purchases", actual.purchases(), "received less returned, at what was paid"),
                        line("Available", actual.available(), "step 1: opening and purchases"),
                        line("Closing stock", actual.closing(), "lots left, at what they cost"),
                        line("Issued", actual.issued(), "step 2: available less closing"),
                        line("Transfers in", actual.transfersIn(), "from elsewhere in the house"),
                        line("Transfers out", actual.transfersOut(), "to elsewhere in the house"),
                        line("Sold as it is", actual.resold(), "not on plates"),
                        line("Promotions", actual.promotions(), "given away"),
                        line("Consumed", actual.consumed(), "step 3: issued, with what came and less what went"),
                        line("Staff meals", actual.staffMeals(), "step 4: taken off"),
                        line("Of it written off", actual.wasted(), "waste stays in the cost"),
                        line("Of it found missing", actual.countedShort(), "by counts; it stays in the cost")));
    }

    private static Explanation ideal(Statement.Ideal ideal) {
        return Explanation.of(
                "Should have cost",
                (ideal.lowerBound() ? "at least " : "") + Amounts.text(ideal.cost()),
                List.of(
                        Explanation.leaf("Portions sold", String.valueOf(ideal.sold()), "from the diary"),
                        line("Net sales", ideal.sales(), "at today's menu prices without tax"),
                        line("Standard cost", ideal.cost(), "each portion at today's cost with its allowances")));
    }

    private Explanation variance(Statement statement, Money whole) {
        List<Explanation> parts = new ArrayList<>();
        statement.variances().stream().limit(VARIANCES).forEach(line -> parts.add(of(line)));
        Money others = statement.variances().stream()
                .skip(VARIANCES)
                .map(Statement.Variance::money)
                .reduce(Money.zero(whole.currency()), Money::plus);
        if (statement.variances().size() > VARIANCES) {
            parts.add(line("Other ingredients", others, (statement.variances().size() - VARIANCES) + " of them"));
        }
        statement
                .beside()
                .ifPresent(rest -> parts.add(line(
                        "Beside the ingredients",
                        rest,
                        "stock of things made here, parts that nothing sold used, Q factor")));
        return Explanation.of("Variance", Amounts.text(whole), parts);
    }

    private Explanation of(Statement.Variance line) {
        return new Explanation(
                line.name(),
                Amounts.text(line.money()),
                text(line.used()) + " used, " + text(line.should()) + " should have been",
                List.of(
                        line("By use", line.byUse(), "the difference at today's price"),
                        line("By price", line.byPrice(), "what it cost against today's price"),
                        Explanation.leaf("Of it written off", text(line.wasted()), "")),
                Optional.of(new Subject("item", line.item())));
    }

    private String text(Quantity quantity) {
        return QuantityText.format(quantity, style);
    }

    private static Explanation line(String title, Money money, String source) {
        return Explanation.leaf(title, Amounts.text(money), source);
    }
}
