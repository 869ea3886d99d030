package etamine.costing.internal.paper;

import etamine.costing.Statement;
import etamine.costing.internal.words.Amounts;
import etamine.documents.Block;
import etamine.documents.Block.Facts.Pair;
import etamine.measures.Money;
import java.util.ArrayList;
import java.util.List;

/**
 * A statement on paper.
 *
 * @param statement the statement
 */
record StatementPaper(Statement statement) {

    /** One step. */
    record Step(String sign, String what, Money money) {}

    CostTable<Step> steps() {
        List<Step> steps = new ArrayList<>();
        statement.actual().ifPresent(actual -> {
            steps.add(new Step("", "Opening stock", actual.opening()));
            steps.add(new Step("+", "Purchases", actual.purchases()));
            steps.add(new Step("=", "Available", actual.available()));
            steps.add(new Step("-", "Closing stock", actual.closing()));
            steps.add(new Step("=", "Issued", actual.issued()));
            steps.add(new Step("+", "Transfers in", actual.transfersIn()));
            steps.add(new Step("-", "Transfers out", actual.transfersOut()));
            steps.add(new Step("-", "Sold as it is", actual.resold()));
            steps.add(new Step("-", "Promotions", actual.promotions()));
            steps.add(new Step("=", "Consumed", actual.consumed()));
            steps.add(new Step("-", "Staff meals", actual.staffMeals()));
            steps.add(new Step("=", "Cost of food sold", actual.costOfFoodSold()));
            steps.add(new Step("", "of it written off", actual.wasted()));
            steps.add(new Step("", "of it found missing by counts", actual.countedShort()));
        });
        return CostTable.of(steps)
                .with("", 1, Step::sign)
                .with("Step", 8, Step::what)
                .with("Amount", 3, Step::money);
    }

    CostTable<Statement.Variance> variances() {
        return CostTable.of(statement.variances())
                .with("Ingredient", 7, Statement.Variance::name)
                .with("Used", 3, line -> Amounts.shown(line.used()))
                .with("Should have been", 3, line -> Amounts.shown(line.should()))
                .with("Written off", 3, line -> Amounts.shown(line.wasted()))
                .with("Cost", 3, Statement.Variance::cost)
                .with("Should cost", 3, Statement.Variance::idealCost)
                .with("Over by", 3, Statement.Variance::money)
                .with("By use", 3, Statement.Variance::byUse)
                .with("By price", 3, Statement.Variance::byPrice);
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Facts(facts()));
        if (!steps().rows().isEmpty()) {
            blocks.add(steps().grid());
        }
        if (!statement.variances().isEmpty()) {
            blocks.add(new Block.Heading("Variance by ingredient, the largest first"));
            blocks.add(variances().grid());
        }
        statement
                .beside()
                .ifPresent(
                        rest -> blocks.add(
                                new Block.Text(
                                        "Beside the ingredients " + Amounts.text(rest)
                                                + ": stock of things made here, parts of breakdowns that nothing sold used, Q factor and packaging.")));
        statement.notes().forEach(note -> blocks.add(new Block.Caution(note)));
        return blocks;
    }

    private List<Pair> facts() {
        List<Pair> facts = new ArrayList<>();
        statement.ideal().ifPresent(ideal -> {
            facts.add(new Pair("Portions sold", String.valueOf(ideal.sold())));
            facts.add(new Pair("Net sales at today's prices", Amounts.text(ideal.sales())));
        });
        statement
                .actual()
                .ifPresent(actual -> facts.add(new Pair("Cost of food sold", Amounts.text(actual.costOfFoodSold()))));
        statement
                .ideal()
                .ifPresent(ideal -> facts.add(new Pair(
                        "Should have cost", (ideal.lowerBound() ? "at least " : "") + Amounts.text(ideal.cost()))));
        statement.variance().ifPresent(whole -> facts.add(new Pair("Variance", Amounts.text(whole))));
        statement.foodCostPercent().ifPresent(percent -> facts.add(new Pair("Food cost", percent + " %")));
        statement.idealPercent().ifPresent(percent -> facts.add(new Pair("Should have been", percent + " %")));
        return facts;
    }
}
