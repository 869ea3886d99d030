package etamine.recipes.internal.form;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.measures.UnitPrice;
import java.util.List;

/** The lines and steps of a recipe in the exchange form. */
final class LineForm {
    private LineForm() {}

    static ArrayNode uses(List<Use> uses) {
        ArrayNode list = RecipeForm.JSON.createArrayNode();
        for (Use use : uses) {
            ObjectNode line = list.addObject()
                    .put("item", use.item())
                    .put("quantity", use.quantity().toString());
            use.as().ifPresent(as -> line.put("as", as));
            line.put("basis", use.basis().name());
            putWords(line, "or", use.substitutes());
        }
        return list;
    }

    static ArrayNode makes(List<Make> makes) {
        ArrayNode list = RecipeForm.JSON.createArrayNode();
        for (Make make : makes) {
            ObjectNode line = list.addObject()
                    .put("item", make.item())
                    .put("quantity", make.quantity().toString());
            make.credit().ifPresent(credit -> putPrice(line, "credit", credit));
            make.marketValue().ifPresent(value -> putPrice(line, "marketValue", value));
        }
        return list;
    }

    static ArrayNode steps(List<Step> steps) {
        ArrayNode list = RecipeForm.JSON.createArrayNode();
        for (Step step : steps) {
            ObjectNode form = list.addObject().put("id", step.id()).put("text", step.text());
            RecipeForm.putTime(form, "hands", step.hands());
            RecipeForm.putTime(form, "unattended", step.unattended());
            RecipeForm.putText(form, "temperature", step.temperature());
            RecipeForm.putTime(form, "holds", step.holds());
            RecipeForm.putText(form, "equipment", step.equipment());
            RecipeForm.putText(form, "station", step.station());
            putWords(form, "after", step.after());
        }
        return list;
    }

    private static void putPrice(ObjectNode line, String member, UnitPrice price) {
        line.putObject(member)
                .put("amount", price.amount().toPlainString())
                .put("per", price.per().toString());
    }

    private static void putWords(ObjectNode form, String member, List<String> words) {
        if (!words.isEmpty()) {
            words.forEach(form.putArray(member)::add);
        }
    }
}
