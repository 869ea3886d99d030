package etamine.recipes.internal.need;

import etamine.base.Problem;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Requirement;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Converter;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.RecipeGraph;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.rule.RecipeRules;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Follows a demand down the graph, users before what they use, so that every recipe is reckoned once with its whole
 * need. Exact. Used once.
 */
final class Explosion {
    private final RecipeGraph graph;
    private final ItemView items;
    private final Map<String, Quantity> needs = new TreeMap<>();
    private final Map<String, Quantity> onHand = new TreeMap<>();
    private final Map<String, Ratio> batches = new LinkedHashMap<>();
    private final Map<String, Map<String, Quantity>> parts = new TreeMap<>();
    private final List<Problem> problems = new ArrayList<>();

    Explosion(RecipeGraph graph, ItemView items) {
        this.graph = graph;
        this.items = items;
    }

    Requirement require(Map<String, Quantity> wanted, Map<String, Quantity> available) {
        available.forEach((item, quantity) -> graph.maker(item).ifPresent(maker -> {
            inOwnUnit(item, quantity, "On hand, " + items.name(item)).ifPresent(own -> onHand.put(item, own));
        }));
        wanted.forEach((item, quantity) -> inOwnUnit(item, quantity, "Wanted, " + items.name(item))
                .ifPresent(own -> needs.merge(item, own, Quantity::plus)));
        List<Recipe> order = graph.inOrder();
        for (int i = order.size() - 1; i >= 0; i--) {
            follow(order.get(i));
        }
        Map<String, Quantity> bought = needs.entrySet().stream()
                .filter(need -> graph.maker(need.getKey()).isEmpty())
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        return new Requirement(bought, batches, parts, problems);
    }

    private void follow(Recipe recipe) {
        Ratio most = Ratio.ZERO;
        for (Make make : recipe.makes()) {
            Quantity need = needs.get(make.item());
            if (need != null
                    && graph.maker(make.item()).filter(maker -> maker == recipe).isPresent()) {
                most = most.max(batchesFor(make, need));
            }
        }
        if (most.signum() <= 0) {
            return;
        }
        batches.put(recipe.id(), most);
        graph.loopThrough(recipe.id())
                .ifPresent(loop -> problems.add(Problem.error("loop", where(recipe), RecipeRules.loopText(loop))));
        for (int line = 0; line < recipe.uses().size(); line++) {
            take(recipe, line, most);
        }
    }

    private Ratio batchesFor(Make make, Quantity need) {
        Quantity here = onHand.getOrDefault(make.item(), Quantity.zero(need.unit()));
        Quantity perBatch = make.quantity();
        return need.minus(here).dividedBy(perBatch);
    }

    private void take(Recipe recipe, int line, Ratio times) {
        Use use = recipe.uses().get(line);
        String place =
                recipe.name() + ", line " + (line + 1) + " (" + use.quantity() + " " + items.name(use.item()) + ")";
        asPurchased(use, recipe, place)
                .flatMap(each -> inOwnUnit(use.item(), each, place, where(recipe)))
                .map(each -> each.times(times))
                .ifPresent(need -> need(recipe, use.item(), need, place));
    }

    private void need(Recipe recipe, String item, Quantity need, String place) {
        Quantity before = needs.get(item);
        if (before != null && !before.unit().isLike(need.unit())) {
            problems.add(Problem.error(
                    "missing-equivalence",
                    where(recipe),
                    place + ": it is also used in " + before.unit()
                            + "; put it on the ingredient list with a measure."));
            return;
        }
        needs.merge(item, need, Quantity::plus);
        if (graph.maker(item).isEmpty()) {
            parts.computeIfAbsent(item, key -> new TreeMap<>()).merge(recipe.id(), need, Quantity::plus);
        }
    }

    private Optional<Quantity> asPurchased(Use use, Recipe recipe, String place) {
        Optional<Item> item = items.find(use.item());
        if (item.isEmpty()) {
            return unlisted(use, recipe, place);
        }
        if (use.as().filter(as -> item.get().preparation(as).isEmpty()).isPresent()) {
            problems.add(Problem.warning(
                    "unknown-preparation",
                    where(recipe),
                    place + ": "
                            + RecipeRules.unknownPreparation(
                                    item.get(), use.as().get()) + " It is taken untrimmed."));
        }
        return converted(use.asPurchased(item.get()), place, where(recipe));
    }

    /** Without an ingredient list a line can only be taken as it is written; with one, it names nothing. */
    private Optional<Quantity> unlisted(Use use, Recipe recipe, String place) {
        if (items.complete()) {
            problems.add(Problem.error(
                    "unknown-item",
                    where(recipe),
                    place + ": there is no item “" + use.item()
                            + "”; add it to the ingredients or write the recipe that makes it."));
            return Optional.empty();
        }
        if (use.as().isPresent()) {
            problems.add(Problem.warning(
                    "unknown-preparation",
                    where(recipe),
                    place + ": without an ingredient list the yield of “"
                            + use.as().get() + "” is not known."));
        }
        return Optional.of(use.quantity());
    }

    private Optional<Quantity> inOwnUnit(String item, Quantity quantity, String place) {
        if (items.complete() && items.find(item).isEmpty()) {
            problems.add(Problem.error("unknown-item", "", place + ": there is no item “" + item + "”."));
            return Optional.empty();
        }
        return inOwnUnit(item, quantity, place, "");
    }

    /** Made things are reckoned in the dimension they are made in, all others in the one they are counted in. */
    private Optional<Quantity> inOwnUnit(String item, Quantity quantity, String place, String where) {
        Unit own = graph.maker(item)
                .flatMap(maker -> maker.makes().stream()
                        .filter(make -> make.item().equals(item))
                        .findFirst())
                .map(make -> make.quantity().unit())
                .or(() -> items.find(item).map(Item::countIn))
                .orElse(quantity.unit());
        Unit basic = own.dimension() == Dimension.WORD ? own : Unit.basic(own.dimension());
        Converter converter = items.find(item).map(Item::converter).orElseGet(() -> Converter.of(List.of()));
        return converted(converter.convert(quantity, basic), place, where);
    }

    private Optional<Quantity> converted(Conversion conversion, String place, String where) {
        if (conversion instanceof Conversion.Converted found) {
            return Optional.of(found.quantity());
        }
        String text = ((Conversion.Missing) conversion).text();
        problems.add(Problem.error("missing-equivalence", where, place + ": " + text));
        return Optional.empty();
    }

    private static String where(Recipe recipe) {
        return RecipeShelf.NAME + "/" + recipe.id();
    }
}
