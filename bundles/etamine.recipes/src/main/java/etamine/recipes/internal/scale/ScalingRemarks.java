package etamine.recipes.internal.scale;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.recipes.MassBalance;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.weight.BatchWeights;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What does not follow a factor in a pot as it does on paper. Scaling stays linear; these are warnings, as kitchens
 * commonly give them, from half or double a batch on.
 */
final class ScalingRemarks {
    private static final Ratio LARGE = Ratio.of(2);
    private static final Ratio SMALL = Ratio.of(1, 2);
    /** From which share of what goes in a loss is told as steam. */
    private static final Ratio STEAM = Ratio.of(1, 10);

    private enum Touchy {
        SALT("salt|soy sauce|fish sauce", "Season by taste: begin with three quarters of the %s and add the rest."),
        LEAVENING(
                "baking powder|baking soda|bicarbonate|yeast|sourdough starter|cream of tartar",
                "What makes it rise does not follow the size of a batch; make a trial before you trust the %s."),
        SETTING(
                "gelatine?|agar|pectin|cornflour|cornstarch|arrowroot|carrageenan|xanthan",
                "What makes it set acts otherwise in another depth; try the set on a spoonful before you trust the %s."),
        SPICE(
                "pepper|peppercorns?|chill?i|clove|cloves|anise|cinnamon|nutmeg|mace|cumin|coriander seed|mustard seed|"
                        + "caraway|cardamom|paprika|saffron|vanilla|allspice|juniper|bay",
                "Strong flavours grow faster than a batch: hold some of the %s back and taste.");

        private final Pattern words;
        private final String sentence;

        Touchy(String words, String sentence) {
            this.words = Pattern.compile("\\b(?:" + words + ")\\b", Pattern.CASE_INSENSITIVE);
            this.sentence = sentence;
        }

        boolean is(Item item) {
            return words.matcher(item.name()).find()
                    || this == SPICE && item.group().toLowerCase(Locale.ROOT).contains("spice") && !SALT.is(item);
        }
    }

    private ScalingRemarks() {}

    static List<String> of(Recipe recipe, Ratio factor, ItemView items) {
        if (factor.compareTo(LARGE) < 0 && factor.compareTo(SMALL) > 0) {
            return List.of();
        }
        List<String> remarks = new ArrayList<>();
        for (Touchy touchy : Touchy.values()) {
            Set<String> names = new LinkedHashSet<>();
            recipe.uses().stream()
                    .map(Use::item)
                    .flatMap(id -> items.find(id).stream())
                    .filter(touchy::is)
                    .forEach(item -> names.add(item.name()));
            if (!names.isEmpty()) {
                remarks.add(touchy.sentence.formatted(String.join(", ", names)));
            }
        }
        if (recipe.steps().stream()
                .anyMatch(step ->
                        !step.unattended().isZero() || !step.temperature().isEmpty())) {
            remarks.add(
                    "Times are those of one batch as written; depth, load and pan decide, so go by what the step says.");
        }
        if (reduces(recipe, items)) {
            remarks.add(
                    "A wider pan steams off more and a fuller one less: stop by weight or volume, not by the clock.");
        }
        return List.copyOf(remarks);
    }

    private static boolean reduces(Recipe recipe, ItemView items) {
        if (recipe.making().reducesTo().isPresent()) {
            return true;
        }
        MassBalance balance = BatchWeights.of(recipe, items);
        Quantity in = balance.in();
        return balance.lost()
                .filter(lost -> !in.isZero() && lost.dividedBy(in).compareTo(STEAM) >= 0)
                .isPresent();
    }
}
