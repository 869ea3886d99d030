package etamine.checks.demo;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What made things cost at the prices of a day: credits off, the rest shared by weight. */
final class MadeCosts {
    private static final Ratio PLACES = Ratio.of(1_000_000_000_000L);

    private final WrittenKitchen kitchen;
    private final Kitchenwork work;
    private final Map<LocalDate, Map<String, Ratio>> known = new HashMap<>();

    MadeCosts(WrittenKitchen kitchen, Kitchenwork work) {
        this.kitchen = kitchen;
        this.work = work;
    }

    /** What one base unit of the item costs on that day. */
    Ratio perBase(String item, LocalDate day) {
        return known.computeIfAbsent(day, this::costs).get(item);
    }

    private Map<String, Ratio> costs(LocalDate day) {
        Map<String, Ratio> costs = new HashMap<>();
        kitchen.items().values().stream()
                .filter(item -> !item.made())
                .forEach(item -> costs.put(item.id(), bought(item, day)));
        List<Recipe> plateFirst = work.plateFirst();
        for (int i = plateFirst.size() - 1; i >= 0; i--) {
            make(plateFirst.get(i), costs);
        }
        return costs;
    }

    private Ratio bought(Item item, LocalDate day) {
        return kitchen.packs(item.id()).stream()
                .filter(pack -> !pack.from().isAfter(day))
                .map(ListedPack::perBase)
                .min(Ratio::compareTo)
                .orElseGet(
                        () -> item.writtenPrice().map(price -> price.perBase()).orElse(Ratio.ZERO));
    }

    private void make(Recipe recipe, Map<String, Ratio> costs) {
        Ratio left = Ratio.ZERO;
        for (var use : recipe.uses()) {
            left = left.plus(work.asPurchased(use).times(costs.get(use.item())));
        }
        Ratio weight = Ratio.ZERO;
        List<Make> sharing =
                recipe.makes().stream().filter(make -> make.credit().isEmpty()).toList();
        for (Make make : recipe.makes()) {
            if (make.credit().isPresent()) {
                left = left.minus(make.credit().get().cost(make.quantity()));
                costs.put(make.item(), make.credit().get().perBase());
            } else {
                weight = weight.plus(share(make, sharing.size()));
            }
        }
        for (Make make : sharing) {
            Ratio part = left.times(share(make, sharing.size())).dividedBy(weight);
            costs.put(make.item(), rounded(part.dividedBy(base(make))));
        }
    }

    private Ratio share(Make make, int sharing) {
        Item item = kitchen.items().get(make.item());
        return sharing == 1
                ? Ratio.ONE
                : item.converter()
                        .convert(make.quantity(), Dimension.MASS)
                        .orThrow()
                        .amount();
    }

    private static Ratio base(Make make) {
        Quantity made = make.quantity();
        return made.amount().times(made.unit().inBase());
    }

    /** Fractions would grow without end on their way through the recipes. */
    private static Ratio rounded(Ratio cost) {
        return Ratio.of(cost.times(PLACES).toWhole(RoundingMode.HALF_EVEN)).dividedBy(PLACES);
    }
}
