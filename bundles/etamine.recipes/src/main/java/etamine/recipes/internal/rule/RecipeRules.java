package etamine.recipes.internal.rule;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Converter;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.MadeThings;
import etamine.recipes.internal.RecipeGraph;
import etamine.recipes.internal.form.LinePointers;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What a recipe must be, what it must be able to reckon with, and what makes it doubtful. Used once. */
public final class RecipeRules {
    /** Words for work that always leaves something on the board. */
    private static final Pattern TRIMS = Pattern.compile(
            "\\b(?:peeled|cored|trimmed|boned|filleted|shelled|pitted|stoned|skinned|stripped|topped|husked)\\b",
            Pattern.CASE_INSENSITIVE);

    private final Recipe recipe;
    private final ItemView items;
    private final LinePointers pointers;
    private final List<Finding> findings = new ArrayList<>();

    private RecipeRules(Recipe recipe, ItemView items, LinePointers pointers) {
        this.recipe = recipe;
        this.items = items;
        this.pointers = pointers;
    }

    /**
     * Everything found.
     *
     * @param graph has the recipe itself and all others
     * @param items has what the recipe makes
     */
    public static List<Finding> of(Recipe recipe, RecipeGraph graph, ItemView items, LinePointers pointers) {
        RecipeRules rules = new RecipeRules(recipe, items, pointers);
        rules.whole();
        graph.loopThrough(recipe.id())
                .ifPresent(loop -> rules.add("loop", Finding.Grade.SENSELESS, "/uses", loopText(loop)));
        for (int i = 0; i < recipe.uses().size(); i++) {
            rules.use(recipe.uses().get(i), pointers.uses().get(i));
        }
        rules.makes();
        rules.findings.addAll(LinkRules.of(recipe, graph, items, pointers));
        rules.findings.addAll(BalanceRules.of(recipe, items));
        return List.copyOf(rules.findings);
    }

    public static String loopText(List<Recipe> loop) {
        return "This goes round in a circle: " + loop.stream().map(Recipe::name).collect(Collectors.joining(" -> "))
                + ". Each needs the next to be made first; take one of these lines out.";
    }

    public static String unknownPreparation(Item item, String as) {
        String known = item.preparations().stream().map(Preparation::name).collect(Collectors.joining("; "));
        return item.name() + " has no preparation “" + as + "”; "
                + (known.isEmpty()
                        ? "add it to the ingredient with its yield."
                        : "add it, or use one of: " + known + ".");
    }

    private void whole() {
        if (!recipe.id().matches("[\\p{L}\\p{N}][\\p{L}\\p{N}._-]{0,79}")) {
            senseless(
                    "bad-id", "/id", "Give it an identifier of letters, digits, dots or hyphens, such as fowl-stock.");
        }
        if (recipe.name().isBlank()) {
            senseless("no-name", "/name", "Give the recipe a name.");
        }
        if (recipe.makes().isEmpty()) {
            senseless("makes-nothing", "/makes", "Say what it makes and how much, such as 380 g.");
        }
        recipe.portion()
                .filter(portion -> portion.signum() <= 0)
                .ifPresent(portion -> senseless(
                        "not-positive", "/portion", "A portion must be more than zero, not " + portion + "."));
        recipe.menu()
                .filter(menu -> menu.price().signum() < 0)
                .ifPresent(menu ->
                        senseless("negative-price", "/menuPrice", "Write a menu price that is not less than zero."));
        if (recipe.tested() < 0) {
            senseless("not-positive", "/tested", "Write how often it was tested, 0 or more.");
        }
    }

    private void use(Use use, String pointer) {
        if (use.quantity().signum() <= 0) {
            senseless("not-positive", pointer + "/quantity", line(use) + ": write more than zero.");
            return;
        }
        if (items.find(use.item()).isEmpty()) {
            if (items.complete()) {
                incomplete(
                        "unknown-item",
                        pointer + "/item",
                        "There is no item “" + use.item()
                                + "”; add it to the ingredients or write the recipe that makes it.");
            }
            return;
        }
        Item item = items.find(use.item()).get();
        if (use.as().filter(as -> item.preparation(as).isEmpty()).isPresent()) {
            incomplete(
                    "unknown-preparation",
                    pointer + "/as",
                    unknownPreparation(item, use.as().get()));
        } else if (use.as()
                .flatMap(item::preparation)
                .filter(RecipeRules::losesNothing)
                .isPresent()) {
            add(
                    "no-yield",
                    Finding.Grade.DOUBTFUL,
                    pointer + "/as",
                    "“" + use.as().get() + "” of " + item.name()
                            + " has no yield, so nothing counts as trimmed off; weigh it once and write it down.");
        } else if (use.asPurchased(item) instanceof Conversion.Missing missing) {
            incomplete("missing-equivalence", pointer + "/quantity", line(use) + ": " + missing.text());
        }
    }

    private static boolean losesNothing(Preparation preparation) {
        return preparation.yield().equals(Ratio.ONE)
                && TRIMS.matcher(preparation.name()).find();
    }

    private void makes() {
        Set<String> seen = new HashSet<>();
        long sharing =
                recipe.makes().stream().filter(make -> make.credit().isEmpty()).count();
        for (int i = 0; i < recipe.makes().size(); i++) {
            Make make = recipe.makes().get(i);
            String pointer = pointers.makes().get(i);
            if (!seen.add(make.item())) {
                senseless(
                        "made-twice",
                        pointer + "/item",
                        "It makes " + items.name(make.item()) + " twice; put both amounts in one line.");
            } else if (make.quantity().signum() <= 0) {
                senseless("not-positive", pointer + "/quantity", items.name(make.item()) + ": write more than zero.");
            } else {
                made(make, pointer, sharing);
            }
        }
        if (!recipe.makes().isEmpty() && sharing == 0) {
            add(
                    "all-credited",
                    Finding.Grade.DOUBTFUL,
                    "/makes",
                    "Everything it makes is credited, so nothing takes the rest of its cost; leave one credit out.");
        }
        recipe.makes().stream().findFirst().ifPresent(this::portion);
    }

    private void made(Make make, String pointer, long sharing) {
        make.credit().ifPresent(credit -> {
            if (credit.amount().signum() < 0) {
                senseless("negative-price", pointer + "/credit/amount", "Write a credit that is not less than zero.");
            }
            reach(make, credit.per(), make.quantity().unit(), pointer + "/credit/per");
        });
        if (make.quantity().unit().dimension() == Dimension.WORD) {
            reach(make, make.quantity(), Unit.G, pointer + "/quantity");
        } else if (sharing > 1 && make.credit().isEmpty()) {
            reach(make, make.quantity(), Unit.G, pointer + "/quantity");
        }
    }

    private void portion(Make main) {
        recipe.portion()
                .ifPresent(portion -> reach(main, portion, main.quantity().unit(), "/portion"));
    }

    private void reach(Make make, Quantity from, Unit to, String pointer) {
        Conversion conversion = items.find(make.item())
                .map(Item::converter)
                .orElseGet(() -> Converter.of(MadeThings.portion(recipe)))
                .convert(from, to);
        if (conversion instanceof Conversion.Missing missing) {
            incomplete("missing-equivalence", pointer, items.name(make.item()) + ": " + missing.text());
        }
    }

    private String line(Use use) {
        return use.quantity() + " " + items.name(use.item());
    }

    private void senseless(String code, String pointer, String text) {
        add(code, Finding.Grade.SENSELESS, pointer, text);
    }

    private void incomplete(String code, String pointer, String text) {
        add(code, Finding.Grade.INCOMPLETE, pointer, text);
    }

    private void add(String code, Finding.Grade grade, String pointer, String text) {
        findings.add(new Finding(code, grade, pointer, text));
    }
}
