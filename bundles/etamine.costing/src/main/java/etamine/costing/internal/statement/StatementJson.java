package etamine.costing.internal.statement;

import etamine.costing.Statement;
import etamine.costing.WeekCost;
import etamine.costing.internal.words.Amounts;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A statement in the console's JSON form; what is not known is absent. */
final class StatementJson {
    private StatementJson() {}

    static Map<String, Object> of(Statement statement, List<String> files) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("from", statement.days().from().toString());
        json.put("to", statement.days().to().toString());
        statement.actual().ifPresent(actual -> actual(json, actual));
        statement.ideal().ifPresent(ideal -> {
            json.put("sold", ideal.sold());
            json.put("sales", Amounts.amount(ideal.sales()));
            json.put("idealCost", Amounts.amount(ideal.cost()));
            if (ideal.lowerBound()) {
                json.put("lowerBound", true);
            }
        });
        statement.foodCostPercent().ifPresent(percent -> percent(json, "foodCostPercent", percent));
        statement.idealPercent().ifPresent(percent -> percent(json, "idealFoodCostPercent", percent));
        statement.variance().ifPresent(whole -> json.put("totalVariance", Amounts.amount(whole)));
        json.put(
                "variance",
                statement.variances().stream().map(StatementJson::variance).toList());
        statement.beside().ifPresent(rest -> json.put("beside", Amounts.amount(rest)));
        json.put("notes", statement.notes());
        if (!files.isEmpty()) {
            json.put("files", files);
        }
        return json;
    }

    static Map<String, Object> week(WeekCost week) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("from", week.days().from().toString());
        json.put("to", week.days().to().toString());
        json.put("sales", Amounts.amount(week.sales()));
        json.put("idealCost", Amounts.amount(week.ideal()));
        week.idealPercent().ifPresent(percent -> percent(json, "idealFoodCostPercent", percent));
        week.actual().ifPresent(cost -> json.put("costOfFoodSold", Amounts.amount(cost)));
        week.actualPercent().ifPresent(percent -> percent(json, "foodCostPercent", percent));
        return json;
    }

    private static void percent(Map<String, Object> json, String name, BigDecimal percent) {
        json.put(name, percent.toPlainString());
    }

    private static void actual(Map<String, Object> json, Statement.Actual actual) {
        json.put("opening", Amounts.amount(actual.opening()));
        json.put("purchases", Amounts.amount(actual.purchases()));
        json.put("available", Amounts.amount(actual.available()));
        json.put("closing", Amounts.amount(actual.closing()));
        json.put("issued", Amounts.amount(actual.issued()));
        json.put("transfersIn", Amounts.amount(actual.transfersIn()));
        json.put("transfersOut", Amounts.amount(actual.transfersOut()));
        json.put("transfers", Amounts.amount(actual.transfersIn().minus(actual.transfersOut())));
        json.put("resold", Amounts.amount(actual.resold()));
        json.put("promotions", Amounts.amount(actual.promotions()));
        json.put("consumed", Amounts.amount(actual.consumed()));
        json.put("staffMeals", Amounts.amount(actual.staffMeals()));
        json.put("costOfFoodSold", Amounts.amount(actual.costOfFoodSold()));
        json.put("wasted", Amounts.amount(actual.wasted()));
        json.put("countedShort", Amounts.amount(actual.countedShort()));
    }

    private static Map<String, Object> variance(Statement.Variance line) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("item", line.item());
        json.put("used", Amounts.text(line.used()));
        json.put("ideal", Amounts.text(line.should()));
        json.put("over", Amounts.text(line.over()));
        json.put("wasted", Amounts.text(line.wasted()));
        json.put("cost", Amounts.amount(line.cost()));
        json.put("idealCost", line.idealCost().map(Amounts::amount));
        json.put("variance", Amounts.amount(line.money()));
        json.put("byUse", Amounts.amount(line.byUse()));
        json.put("byPrice", Amounts.amount(line.byPrice()));
        return json;
    }
}
