package etamine.recipes.internal.weight;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.recipes.MassBalance;
import etamine.recipes.internal.ItemView;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Weighs one batch, line by line, for its balance: only by weights that are written, for what is compared with a test or
 * doubted by a rule must not rest on a guess. What has none is named. {@link WeighedBatch} estimates such. Used once.
 */
public final class BatchWeights {
    private final ItemView items;
    private final LineScale scale;
    private final Set<String> unweighed = new LinkedHashSet<>();
    private Quantity bought = Quantity.zero(Unit.G);
    private Quantity trim = Quantity.zero(Unit.G);
    private Quantity added = Quantity.zero(Unit.G);
    private Quantity out = Quantity.zero(Unit.G);

    private BatchWeights(ItemView items) {
        this.items = items;
        this.scale = new LineScale(items, Dimension.MASS);
    }

    public static MassBalance of(Recipe recipe, ItemView items) {
        BatchWeights weights = new BatchWeights(items);
        List<MassBalance.Input> inputs = new ArrayList<>();
        recipe.uses().forEach(use -> inputs.add(weights.input(use)));
        recipe.making().absorbs().map(BatchWeights::water).ifPresent(weights::add);
        List<MassBalance.Output> outputs = new ArrayList<>();
        recipe.makes().forEach(make -> outputs.add(weights.output(make)));
        return new MassBalance(
                inputs,
                weights.bought,
                weights.trim,
                weights.added,
                weights.out,
                outputs,
                List.copyOf(weights.unweighed));
    }

    /** Water taken up weighs a kilogram a litre, which is as exact as anybody measures it. */
    public static Quantity water(Quantity taken) {
        return taken.unit().dimension() == Dimension.VOLUME
                ? new Quantity(taken.in(Unit.ML).amount(), Unit.G)
                : taken.in(Unit.G);
    }

    private void add(Quantity water) {
        added = added.plus(water);
    }

    private MassBalance.Input input(Use use) {
        Optional<Item> item = items.find(use.item());
        String name = item.map(Item::name).orElse(use.item());
        LineScale.Weight weight = scale.line(use);
        if (!weight.known()) {
            unweighed.add(name + ": "
                    + (item.isPresent() ? weight.missing() : "there is no such item, so it has no weight."));
            return new MassBalance.Input(use.item(), name, Optional.empty(), Optional.empty());
        }
        Quantity purchased = new Quantity(weight.before(), scale.unit());
        Quantity used = new Quantity(weight.after(), scale.unit());
        take(purchased, used);
        return new MassBalance.Input(use.item(), name, Optional.of(purchased), Optional.of(used));
    }

    private void take(Quantity purchased, Quantity used) {
        bought = bought.plus(purchased);
        if (used.compareTo(purchased) <= 0) {
            trim = trim.plus(purchased.minus(used));
        } else {
            added = added.plus(used.minus(purchased));
        }
    }

    private MassBalance.Output output(Make make) {
        Optional<Item> item = items.find(make.item());
        String name = item.map(Item::name).orElse(make.item());
        Optional<Quantity> weight = item.flatMap(known -> weight(known, make.quantity()));
        if (weight.isEmpty() && make.quantity().unit().dimension() == Dimension.MASS) {
            weight = Optional.of(make.quantity().in(Unit.G));
        }
        if (weight.isEmpty()) {
            unweighed.add(item.map(known -> name + ": " + missingWeight(known, make.quantity()))
                    .orElse(name + ": add what 1 " + make.quantity().unit() + " of it weighs."));
        }
        weight.ifPresent(grams -> out = out.plus(grams));
        return new MassBalance.Output(make.item(), name, weight);
    }

    static Optional<Quantity> weight(Item item, Quantity quantity) {
        return item.converter().convert(quantity, Dimension.MASS) instanceof Conversion.Converted found
                ? Optional.of(found.quantity())
                : Optional.empty();
    }

    private static String missingWeight(Item item, Quantity quantity) {
        return item.converter().convert(quantity, Dimension.MASS) instanceof Conversion.Missing missing
                ? missing.text()
                : "It has no weight.";
    }
}
