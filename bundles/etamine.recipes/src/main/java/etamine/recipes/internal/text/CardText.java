package etamine.recipes.internal.text;

import etamine.base.verb.TextTable;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Making;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.measures.MeasureStyle;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.recipes.Trust;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import etamine.recipes.internal.Standards;
import etamine.recipes.internal.form.RecipeForm;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Recipes as lines of text, in the units of the house. */
@Component(service = CardText.class)
public final class CardText {
    private final KnownItems known;
    private final MadeItems made;
    private volatile @Nullable Kitchen kitchen;

    /** Cards that name those items. */
    @Activate
    public CardText(@Reference KnownItems known, @Reference MadeItems made) {
        this.known = known;
        this.made = made;
    }

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    void bindKitchen(Kitchen found) {
        kitchen = found;
    }

    void unbindKitchen(Kitchen gone) {
        if (kitchen == gone) {
            kitchen = null;
        }
    }

    /** The day by the clock of the house, or of the machine where there is no house. */
    public LocalDate today() {
        Kitchen house = kitchen;
        return house == null ? LocalDate.now(Clock.systemDefaultZone()) : house.today();
    }

    public String quantity(Quantity quantity) {
        Kitchen house = kitchen;
        return QuantityText.format(
                quantity, house == null ? MeasureStyle.METRIC : house.house().measures());
    }

    /** What goes in and what comes out. */
    List<String> amounts(Recipe recipe) {
        ItemView items = ItemView.of(known, made);
        List<String> lines = new ArrayList<>();
        TextTable uses = new TextTable(">uses", "", "prepared", "basis");
        for (Use use : recipe.uses()) {
            uses.row(
                    quantity(use.quantity()),
                    items.name(use.item()),
                    use.as().orElse(""),
                    use.basis().name());
        }
        lines.addAll(uses.lines());
        TextTable makes = new TextTable(">makes", "", "credited at");
        for (Make make : recipe.makes()) {
            makes.row(
                    quantity(make.quantity()),
                    items.name(make.item()),
                    make.credit().map(Object::toString).orElse(""));
        }
        lines.add("");
        lines.addAll(makes.lines());
        return lines;
    }

    /** The whole card. */
    public List<String> card(Recipe recipe) {
        List<String> lines = new ArrayList<>();
        lines.add(recipe.name() + " (" + RecipeForm.word(recipe.kind()) + ")");
        recipe.portion().ifPresent(portion -> lines.add("Portion " + quantity(portion)));
        recipe.keeps()
                .ifPresent(keeps -> lines.add(
                        "Keeps " + keeps.getDays() + " days by this kitchen's own figure; local rules decide."));
        Trust trust = Standards.of(recipe, ItemView.of(known, made));
        lines.add(trust(trust) + (recipe.standing().archived() ? "; put away" : ""));
        trust.missing().forEach(missing -> lines.add("  to be standardised: " + missing));
        lines.addAll(making(recipe));
        lines.add("");
        lines.addAll(amounts(recipe));
        if (!recipe.steps().isEmpty()) {
            lines.add("");
            recipe.steps().forEach(step -> lines.add(step(step)));
        }
        if (!recipe.notes().isEmpty()) {
            lines.add("");
            recipe.notes().lines().forEach(lines::add);
        }
        return lines;
    }

    private static String trust(Trust trust) {
        return switch (trust.level()) {
            case DRAFT -> "Draft, not tested yet";
            case TESTED -> "Tested " + trust.tries() + (trust.tries() == 1 ? " time" : " times");
            case STANDARDISED -> "Standardised, tested " + trust.tries() + " times";
        };
    }

    private List<String> making(Recipe recipe) {
        List<String> lines = new ArrayList<>();
        Making making = recipe.making();
        if (!making.station().isEmpty()) {
            lines.add("Station: " + making.station());
        }
        if (making.whole()) {
            lines.add("Made in whole batches only");
        }
        making.absorbs().ifPresent(water -> lines.add("Takes up " + quantity(water) + " of water"));
        making.reducesTo().ifPresent(share -> lines.add("Comes down to " + share + " of what goes in"));
        recipe.drinks()
                .forEach(drink -> lines.add("Poured with it: " + drink.recipe()
                        + (drink.level().isEmpty() ? "" : " (" + drink.level() + ")")));
        return lines;
    }

    private static String step(Step step) {
        String facts = LineWords.facts(step);
        return step.id() + ". " + step.text() + (facts.isEmpty() ? "" : " [" + facts + "]");
    }

    /** The lines of a recipe in words, with the items as they are now. */
    public LineWords lines() {
        return new LineWords(ItemView.of(known, made));
    }

    /** The lines of a recipe for machines, exact. */
    static Map<String, Object> json(Recipe recipe) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("uses", recipe.uses().stream().map(CardText::json).toList());
        json.put("makes", recipe.makes().stream().map(CardText::json).toList());
        return json;
    }

    public static Map<String, Object> json(Use use) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put("item", use.item());
        line.put("quantity", use.quantity().toString());
        use.as().ifPresent(as -> line.put("as", as));
        line.put("basis", use.basis().name());
        if (!use.substitutes().isEmpty()) {
            line.put("or", use.substitutes());
        }
        return line;
    }

    public static Map<String, Object> json(Make make) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put("item", make.item());
        line.put("quantity", make.quantity().toString());
        make.credit()
                .ifPresent(credit -> line.put(
                        "credit",
                        Map.of(
                                "amount",
                                credit.amount().toPlainString(),
                                "per",
                                credit.per().toString())));
        return line;
    }
}
