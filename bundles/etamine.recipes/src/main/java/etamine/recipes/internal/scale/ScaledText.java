package etamine.recipes.internal.scale;

import etamine.base.verb.TextTable;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Use;
import etamine.measures.Ratio;
import etamine.recipes.Practical;
import etamine.recipes.Scaled;
import etamine.recipes.internal.text.CardText;
import etamine.recipes.internal.text.LineWords;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A scaled recipe for the console, exact and as a cook would measure it.
 *
 * @param batch what was scaled
 * @param cards names items and amounts
 */
record ScaledText(Scaled.Batch batch, CardText cards) {

    Map<String, Object> json() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", batch.recipe().id());
        json.put("factor", batch.factor().toString());
        json.put("asked", batch.asked().toString());
        json.put(
                "uses",
                practical(batch.recipe().uses().stream().map(CardText::json).toList(), batch.uses()));
        json.put(
                "makes",
                practical(batch.recipe().makes().stream().map(CardText::json).toList(), batch.makes()));
        json.put("batches", batch.batches());
        json.put("reasons", batch.reasons());
        json.put("remarks", batch.remarks());
        return json;
    }

    private static List<Map<String, Object>> practical(List<Map<String, Object>> lines, List<Practical> measured) {
        for (int i = 0; i < lines.size(); i++) {
            lines.get(i).put("practical", measured.get(i).measured().toString());
            lines.get(i).put("offPercent", measured.get(i).errorPercent().toPlainString());
        }
        return lines;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(batch.recipe().name() + ", multiplied by " + shown(batch.factor()) + "; " + batch.batches()
                + (batch.batches() == 1 ? " batch" : " batches") + " if made whole");
        lines.addAll(batch.reasons());
        lines.add("");
        LineWords words = cards.lines();
        TextTable table = new TextTable(">exact", ">measured", ">off by", "", "prepared", "basis");
        for (int i = 0; i < batch.uses().size(); i++) {
            Use use = batch.recipe().uses().get(i);
            row(
                    table,
                    batch.uses().get(i),
                    words.name(use.item()),
                    use.as().orElse(""),
                    use.basis().name());
        }
        for (int i = 0; i < batch.makes().size(); i++) {
            Make make = batch.recipe().makes().get(i);
            row(table, batch.makes().get(i), words.name(make.item()), "", "made");
        }
        lines.addAll(table.lines());
        lines.add("");
        lines.addAll(batch.remarks());
        return lines;
    }

    private void row(TextTable table, Practical amount, String name, String prepared, String basis) {
        String off =
                amount.errorPercent().signum() == 0 ? "" : amount.errorPercent().toPlainString() + " %";
        table.row(cards.quantity(amount.exact()), amount.text(), off, name, prepared, basis);
    }

    private static String shown(Ratio factor) {
        return factor.toDecimal(5, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }
}
