package etamine.recipes.ui.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.recipes.Practical;
import etamine.recipes.Scaled;
import etamine.recipes.UseLines;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Scales a recipe to what somebody wishes and lays the answer out, without widgets. */
final class ScaleModel {
    private final Kitchenware ware;
    private final RecipesModel model;

    ScaleModel(Kitchenware ware, RecipesModel model) {
        this.ware = ware;
        this.model = model;
    }

    Scaled scale(String recipe, ScaleWish wish, String typed) {
        String text = typed.strip();
        try {
            return switch (wish) {
                case PORTIONS -> ware.scales().scaling().forCovers(recipe, portions(text));
                case AMOUNT -> ware.scales().scaling().to(recipe, QuantityText.parse(text));
                case VESSELS ->
                    ware.scales()
                            .scaling()
                            .forVessels(recipe, ware.scales().vessels().read(text));
                case ON_HAND -> ware.scales().scaling().fromOnHand(recipe, onHand(text));
            };
        } catch (MeasureException unclear) {
            return new Scaled.Impossible(unclear.getMessage());
        }
    }

    private static Ratio portions(String text) {
        String number = text.replaceAll("(?i)\\s*(portions?|covers?)$", "");
        if (!number.matches("[0-9]{1,6}")) {
            throw new MeasureException("Write how many portions, such as 52.");
        }
        return Ratio.parse(number);
    }

    private Map<String, Quantity> onHand(String text) {
        Map<String, Quantity> have = new LinkedHashMap<>();
        for (String part : text.split("[;\n]")) {
            if (part.isBlank()) {
                continue;
            }
            UseLines.Reading reading = ware.lines().read(part);
            if (reading instanceof UseLines.Reading.Unclear unclear) {
                throw new MeasureException(unclear.text());
            }
            Use use = ((UseLines.Reading.Clear) reading).use();
            have.put(use.item(), use.quantity());
        }
        if (have.isEmpty()) {
            throw new MeasureException("Write what there is, such as 1.2 kg celeriac.");
        }
        return have;
    }

    /** The lines of a scaled recipe. */
    List<ScaledLine> lines(Scaled.Batch batch) {
        Recipe recipe = batch.recipe();
        List<ScaledLine> lines = new ArrayList<>();
        for (int i = 0; i < recipe.uses().size(); i++) {
            Use use = recipe.uses().get(i);
            lines.add(line(lines.size(), "uses", batch.uses().get(i), use.item(), use));
        }
        for (int i = 0; i < recipe.makes().size(); i++) {
            String item = recipe.makes().get(i).item();
            Practical amount = batch.makes().get(i);
            lines.add(new ScaledLine(
                    lines.size(), "makes", exact(amount), amount.text(), off(amount), model.shown(item), "", ""));
        }
        return lines;
    }

    private ScaledLine line(int place, String part, Practical amount, String item, Use use) {
        return new ScaledLine(
                place,
                part,
                exact(amount),
                amount.text(),
                off(amount),
                model.shown(item),
                use.as().orElse(""),
                use.basis().name());
    }

    private static String exact(Practical amount) {
        return QuantityText.formatExact(amount.exact());
    }

    private static String off(Practical amount) {
        if (amount.isExact()) {
            return "";
        }
        String sign = amount.errorPercent().signum() > 0 ? "+" : "";
        return sign + amount.errorPercent().stripTrailingZeros().toPlainString() + " %";
    }

    /** How the factor came about, in a sentence. */
    static String said(Scaled.Batch batch) {
        String factor = batch.factor()
                .toDecimal(4, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        String whole = batch.batches() + (batch.batches() == 1 ? " whole batch" : " whole batches");
        String enough = batch.factor().equals(Ratio.of(batch.batches())) ? "" : "; " + whole + " would be enough";
        List<String> sentences = new ArrayList<>();
        sentences.add("Times " + factor + enough + ".");
        sentences.addAll(batch.reasons());
        return String.join(" ", sentences);
    }

    /** Items that the recipe uses, to be named as on hand. */
    List<String> used(Recipe recipe) {
        return recipe.uses().stream()
                .map(use -> model.words().find(use.item()).map(Item::name).orElse(use.item()))
                .distinct()
                .toList();
    }
}
