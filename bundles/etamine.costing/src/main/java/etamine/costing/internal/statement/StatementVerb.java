package etamine.costing.internal.statement;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.costing.Days;
import etamine.costing.MenuAnalysis;
import etamine.costing.Statement;
import etamine.costing.Statements;
import etamine.costing.WeekCost;
import etamine.costing.internal.paper.PaperDesk;
import etamine.costing.internal.words.Amounts;
import etamine.costing.internal.words.CallWords;
import etamine.kitchen.house.Kitchen;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code statement}: what goods sold should have cost against what they did. */
@Component
public final class StatementVerb implements Verb {
    private static final int SHOWN = 15;
    private static final int MOST_WEEKS = 520;

    private final Statements statements;
    private final MenuAnalysis sales;
    private final PaperDesk desk;
    private final Kitchen kitchen;

    /** The verb on the open book. */
    @Activate
    public StatementVerb(
            @Reference Statements statements,
            @Reference MenuAnalysis sales,
            @Reference PaperDesk desk,
            @Reference Kitchen kitchen) {
        this.statements = statements;
        this.sales = sales;
        this.desk = desk;
        this.kitchen = kitchen;
    }

    @Override
    public VerbUsage usage() {
        return PaperDesk.with(VerbUsage.of("statement", "What goods sold should have cost, and what they did")
                .with("--from", "DATE", "first day; without it, the first with sales")
                .with("--to", "DATE", "last day; without it, the last with sales")
                .with("--weeks", "N", "instead, the food cost of N weeks up to and with the last day"));
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        CallWords words = new CallWords(call);
        Days days = words.days(sales::sold, kitchen.today());
        if (call.has("--weeks")) {
            return weeks(call, days, words.whole("--weeks", MOST_WEEKS));
        }
        Statement statement = statements.of(days);
        List<String> lines = lines(statement);
        List<String> files = desk.write(call, papers -> papers.statement(statement));
        files.forEach(file -> lines.add("Written: " + file));
        boolean look = !statement.notes().isEmpty();
        return new Report(look ? Outcome.LOOK : Outcome.DONE, StatementJson.of(statement, files), lines);
    }

    private Report weeks(VerbCall call, Days days, int count) throws VerbException {
        List<WeekCost> weeks = statements.weeks(days.to(), count);
        TextTable table = new TextTable("Week", ">Net sales", ">Should cost", ">%", ">Cost", ">%");
        weeks.forEach(week -> table.row(
                week.days().toString(),
                week.sales().rounded().toString(),
                week.ideal().rounded().toString(),
                week.idealPercent().map(BigDecimal::toPlainString).orElse(""),
                week.actual().map(cost -> cost.rounded().toString()).orElse(""),
                week.actualPercent().map(BigDecimal::toPlainString).orElse("")));
        List<String> lines =
                new ArrayList<>(weeks.isEmpty() ? List.of("Nothing was sold in these weeks.") : table.lines());
        desk.write(call, papers -> papers.weeks(weeks)).forEach(file -> lines.add("Written: " + file));
        Map<String, Object> json =
                Map.of("weeks", weeks.stream().map(StatementJson::week).toList());
        return new Report(weeks.isEmpty() ? Outcome.LOOK : Outcome.DONE, json, lines);
    }

    private static List<String> lines(Statement statement) {
        List<String> lines = new ArrayList<>();
        lines.add("Statement of " + statement.days());
        statement.actual().ifPresent(actual -> lines.addAll(steps(actual)));
        statement.ideal().ifPresent(ideal -> {
            lines.add("");
            lines.add(ideal.sold() + " portions sold for " + Amounts.text(ideal.sales())
                    + " without tax; they should have"
                    + " cost " + (ideal.lowerBound() ? "at least " : "") + Amounts.text(ideal.cost()) + ", at today's"
                    + " costs and prices.");
        });
        statement.variance().ifPresent(whole -> lines.add("Variance " + Amounts.text(whole)));
        statement
                .foodCostPercent()
                .ifPresent(percent -> lines.add("Food cost " + percent + " % of net sales"
                        + statement
                                .idealPercent()
                                .map(ideal -> ", should have been " + ideal + " %")
                                .orElse("")));
        if (!statement.variances().isEmpty()) {
            lines.add("");
            lines.addAll(variances(statement));
        }
        statement.notes().forEach(note -> lines.add("Look: " + note));
        return lines;
    }

    private static List<String> steps(Statement.Actual actual) {
        TextTable table = new TextTable("Step", ">Amount");
        step(table, "Opening stock", actual.opening());
        step(table, "+ purchases", actual.purchases());
        step(table, "= available", actual.available());
        step(table, "- closing stock", actual.closing());
        step(table, "= issued", actual.issued());
        step(table, "+ transfers in", actual.transfersIn());
        step(table, "- transfers out", actual.transfersOut());
        step(table, "- sold as it is", actual.resold());
        step(table, "- promotions", actual.promotions());
        step(table, "= consumed", actual.consumed());
        step(table, "- staff meals", actual.staffMeals());
        step(table, "= cost of food sold", actual.costOfFoodSold());
        step(table, "  of it written off", actual.wasted());
        step(table, "  of it found missing", actual.countedShort());
        return table.lines();
    }

    private static void step(TextTable table, String what, Money money) {
        table.row(what, money.rounded().toString());
    }

    private static List<String> variances(Statement statement) {
        TextTable table = new TextTable("Ingredient", ">Used", ">Should have been", ">Over by", ">By use", ">By price");
        statement.variances().stream()
                .limit(SHOWN)
                .forEach(line -> table.row(
                        line.name(),
                        Amounts.shown(line.used()),
                        Amounts.shown(line.should()),
                        line.money().rounded().toString(),
                        line.byUse().rounded().toString(),
                        line.byPrice().rounded().toString()));
        List<String> lines = new ArrayList<>(table.lines());
        int rest = statement.variances().size() - SHOWN;
        if (rest > 0) {
            lines.add("and " + rest + " more ingredients; --json or --csv gives all");
        }
        Optional<Money> beside = statement.beside();
        beside.ifPresent(money -> lines.add("Beside the ingredients " + Amounts.text(money)
                + ": stock of things made here, parts of breakdowns that nothing sold used, Q factor and packaging"));
        return lines;
    }
}
