package etamine.costing.internal.butcher;

import etamine.costing.ButcherSheet;
import etamine.costing.ButcherSheet.Part;
import etamine.costing.ButcherSheet.Portion;
import etamine.costing.ButcherSheet.Usable;
import etamine.costing.internal.words.Amounts;
import etamine.measures.UnitPrice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A butcher's sheet in the console's JSON form; the figures of the first usable part stand at the top too. */
final class ButcherJson {
    private ButcherJson() {}

    static Map<String, Object> of(ButcherSheet sheet, long portions, List<String> files) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", sheet.recipe());
        json.put("bought", sheet.bought());
        json.put("purchased", Amounts.text(sheet.purchased()));
        sheet.dealer().ifPresent(price -> json.put("dealerPrice", price(price)));
        sheet.asked().ifPresent(price -> json.put("newDealerPrice", price(price)));
        json.put("cost", Amounts.amount(sheet.cost()));
        sheet.usable().stream().findFirst().flatMap(Part::usable).ifPresent(usable -> usable(json, usable));
        json.put(
                "parts",
                sheet.parts().stream().map(part -> part(sheet, part, portions)).toList());
        json.put("loss", Amounts.text(sheet.loss()));
        Amounts.percent(sheet.loss().amount(), sheet.purchased().amount())
                .ifPresent(percent -> json.put("lossPercent", percent.toPlainString()));
        json.put("notes", sheet.notes());
        if (!files.isEmpty()) {
            json.put("files", files);
        }
        return json;
    }

    private static Map<String, Object> part(ButcherSheet sheet, Part part, long portions) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("item", part.item());
        json.put("weight", Amounts.text(part.weight()));
        json.put("percent", part.percent().toPlainString());
        part.valuedAt().ifPresent(price -> json.put("valuedAt", price(price)));
        json.put("value", Amounts.amount(part.value()));
        json.put("credited", part.usable().isEmpty());
        part.usable().ifPresent(usable -> usable(json, usable));
        if (portions > 0) {
            sheet.forPortions(part, portions).ifPresent(need -> {
                json.put("usableFor", Amounts.text(need.usable()));
                json.put("buyFor", Amounts.text(need.purchased()));
            });
        }
        return json;
    }

    private static void usable(Map<String, Object> json, Usable usable) {
        json.put("costPerUsableKg", Amounts.amount(usable.perKg()));
        usable.factor().ifPresent(factor -> json.put("costFactorPerKg", ButcherVerb.factor(factor)));
        usable.askedPerKg().ifPresent(cost -> json.put("newCostPerUsableKg", Amounts.amount(cost)));
        usable.portion().ifPresent(portion -> portion(json, portion));
    }

    private static void portion(Map<String, Object> json, Portion portion) {
        json.put("portion", Amounts.text(portion.size()));
        json.put("portions", portion.count());
        json.put("portionCost", Amounts.amount(portion.cost()));
        portion.factor().ifPresent(factor -> json.put("costFactorPerPortion", ButcherVerb.factor(factor)));
        portion.askedCost().ifPresent(cost -> json.put("newPortionCost", Amounts.amount(cost)));
    }

    private static Map<String, Object> price(UnitPrice price) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("amount", price.amount().toPlainString());
        json.put("per", price.per().toString());
        return json;
    }
}
