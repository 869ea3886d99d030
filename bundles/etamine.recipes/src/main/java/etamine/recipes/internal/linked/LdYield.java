package etamine.recipes.internal.linked;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How much a foreign recipe makes: {@code 4}, {@code 4 servings}, {@code 1.5 kg}, the best of several such. */
final class LdYield {
    private static final Pattern NUMBER = Pattern.compile("\\d{1,6}(?:[.,]\\d{1,3})?");
    private static final Pattern MEASURED = Pattern.compile(
            "(?i)^(?:about|approx\\.?|ca\\.?|makes|yields)?\\s*([\\d.,/½¼¾ ]+\\s*(?:mg|g|kg|oz|lb|ml|cl|dl|l))\\b.*");

    private LdYield() {}

    /** What one batch makes; one portion, with a remark, where the file does not say. */
    static Quantity of(JsonNode recipe, List<String> remarks) {
        JsonNode makes = recipe.has("recipeYield") ? recipe.path("recipeYield") : recipe.path("yield");
        Optional<Quantity> portions = Optional.empty();
        for (JsonNode each : LdWords.many(makes)) {
            String written = each.has("value") ? LdWords.text(each.path("value")) : LdWords.text(each);
            Optional<Quantity> measured = measured(written);
            if (measured.isPresent()) {
                return measured.get();
            }
            portions = portions.isPresent() ? portions : portions(written);
        }
        if (portions.isEmpty()) {
            String said = LdWords.text(makes);
            remarks.add((said.isEmpty()
                            ? "The file does not say how much it makes"
                            : "How much it makes is not understood: “" + LdWords.shown(said) + "”")
                    + "; it is taken for one portion. Write its yield.");
        }
        return portions.orElse(Quantity.of(1, Unit.PORTION));
    }

    private static Optional<Quantity> measured(String written) {
        Matcher matcher = MEASURED.matcher(written);
        if (written.length() > 200 || !matcher.matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(QuantityText.parse(matcher.group(1).strip())).filter(amount -> amount.signum() > 0);
        } catch (MeasureException unreadable) {
            return Optional.empty();
        }
    }

    private static Optional<Quantity> portions(String written) {
        Matcher matcher = NUMBER.matcher(written);
        return matcher.find()
                ? Optional.of(new Quantity(Ratio.parse(matcher.group().replace(',', '.')), Unit.PORTION))
                        .filter(amount -> amount.signum() > 0)
                : Optional.empty();
    }
}
