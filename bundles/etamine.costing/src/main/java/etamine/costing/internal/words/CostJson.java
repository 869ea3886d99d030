package etamine.costing.internal.words;

import etamine.base.Problem;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Costs in the console's JSON form. Computed amounts have four decimals: they are not prices yet. */
public final class CostJson {
    private static final int PLACES = 4;

    private CostJson() {}

    public static Map<String, Object> of(String currency, List<RecipeCost> costs) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("currency", currency);
        json.put("recipes", costs.stream().map(CostJson::recipe).toList());
        return json;
    }

    private static Map<String, Object> recipe(RecipeCost cost) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", cost.recipe());
        json.put("lowerBound", !cost.complete());
        json.put("batchCost", amount(cost.batch()));
        json.put("makes", cost.makes().stream().map(CostJson::made).toList());
        cost.portion().ifPresent(portion -> json.put("portionCost", amount(portion)));
        cost.plate().ifPresent(plate -> plate(json, plate));
        cost.labour().ifPresent(labour -> json.put("labour", labour(labour)));
        if (!cost.drinks().isEmpty()) {
            json.put("drinks", cost.drinks().stream().map(CostJson::drink).toList());
        }
        json.put("missing", cost.missing());
        json.put("warnings", cost.warnings().stream().map(Problem::text).toList());
        json.put("lines", cost.lines().stream().map(CostJson::line).toList());
        return json;
    }

    private static Map<String, Object> labour(RecipeCost.Labour labour) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("batch", amount(labour.batch()));
        labour.portion().ifPresent(portion -> json.put("portion", amount(portion)));
        json.put("own", amount(labour.own()));
        return json;
    }

    private static Map<String, Object> drink(RecipeCost.WithDrink drink) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("drink", drink.drink());
        json.put("level", drink.level());
        json.put("drinkCost", amount(drink.poured().cost()));
        put(json, "pourCostPercent", drink.poured().foodCostPercent().map(BigDecimal::toPlainString));
        json.put("cost", amount(drink.cost()));
        json.put("netPrice", amount(drink.net()));
        put(json, "costPercent", drink.costPercent().map(BigDecimal::toPlainString));
        json.put("contribution", amount(drink.contribution()));
        json.put("lowerBound", !drink.complete());
        return json;
    }

    private static void plate(Map<String, Object> json, PlateCost plate) {
        json.put("plateCost", amount(plate.cost()));
        Map<String, Object> parts = new LinkedHashMap<>();
        parts.put("food", amount(plate.parts().food()));
        parts.put("qFactorShare", amount(plate.parts().qFactorShare()));
        parts.put("qFactorAmount", amount(plate.parts().qFactorAmount()));
        parts.put("packaging", amount(plate.parts().packaging()));
        json.put("plateParts", parts);
        json.put("netPrice", amount(plate.net()));
        plate.foodCostPercent().ifPresent(percent -> json.put("foodCostPercent", percent.toPlainString()));
        json.put("contribution", amount(plate.contribution()));
        put(json, "targetFoodCostPercent", plate.target().map(BigDecimal::toPlainString));
        put(json, "labourCost", plate.labour().map(CostJson::amount));
        put(json, "primeCost", plate.prime().map(CostJson::amount));
    }

    private static Map<String, Object> made(RecipeCost.Made made) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("item", made.item());
        json.put("quantity", made.quantity().toString());
        json.put("unitCost", price(made.unitCost()));
        if (made.credited()) {
            json.put("credited", true);
        } else if (made.byMarketValue()) {
            json.put("byMarketValue", true);
        }
        return json;
    }

    private static Map<String, Object> line(RecipeCost.Line line) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("item", line.item());
        json.put("quantity", line.quantity().toString());
        line.as().ifPresent(as -> json.put("as", as));
        put(json, "asPurchased", line.asPurchased().map(CostJson::text));
        put(json, "unitPrice", line.unitPrice().map(CostJson::price));
        put(json, "cost", line.cost().map(CostJson::amount));
        json.put("source", line.source());
        line.origin().ifPresent(origin -> {
            json.put("priceSource", origin.source());
            put(json, "since", origin.since().map(Object::toString));
            put(json, "daysOld", origin.daysOld());
        });
        return json;
    }

    public static void put(Map<String, Object> json, String name, Optional<?> value) {
        value.ifPresent(found -> json.put(name, found));
    }

    public static Map<String, Object> price(UnitPrice price) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("amount", trimmed(price.amount()));
        json.put("per", price.per().toString());
        return json;
    }

    public static String text(UnitPrice price) {
        return trimmed(price.amount()) + " per " + price.per();
    }

    /** A quantity reckoned rather than written, as a decimal of at most four places. */
    public static String text(Quantity quantity) {
        BigDecimal amount =
                quantity.amount().toDecimal(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
        return amount.toPlainString() + " " + quantity.unit();
    }

    public static String amount(Money money) {
        return money.amount().setScale(PLACES, RoundingMode.HALF_UP).toPlainString();
    }

    private static String trimmed(BigDecimal amount) {
        BigDecimal rounded = amount.setScale(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.setScale(Math.max(2, rounded.scale())).toPlainString();
    }
}
