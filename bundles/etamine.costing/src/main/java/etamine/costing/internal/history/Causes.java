package etamine.costing.internal.history;

import etamine.costing.Moved;
import etamine.costing.Moved.Cause;
import etamine.costing.Moved.Kind;
import etamine.costing.internal.engine.Reckoning;
import etamine.costing.internal.words.CostJson;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What moved a plate: every price with its own part, and the documents that changed. */
final class Causes {
    private static final int KINDS = 4;

    private final Mixture mixture;
    private final DocumentChanges changes;
    private final Map<String, String> movedPrices = new TreeMap<>();

    Causes(Mixture mixture) {
        this.mixture = mixture;
        this.changes = new DocumentChanges(mixture);
        Structure now = mixture.of(Mixture.MIXES - 1);
        mixture.now().items().forEach((id, item) -> {
            double before = now.perUnit(id, mixture.then().quotes());
            double after = now.perUnit(id, mixture.now().quotes());
            if (before != after && !Double.isNaN(before) && !Double.isNaN(after) && !now.isMade(id)) {
                movedPrices.put(id, text(item, before, after));
            }
        });
    }

    private static String text(Item item, double before, double after) {
        String percent = PriceMoves.percent(Reckoning.price(item, before), Reckoning.price(item, after))
                .map(found -> ", " + (found.signum() > 0 ? "+" : "") + found.toPlainString() + " %")
                .orElse("");
        return item.name() + ": " + CostJson.text(Reckoning.price(item, before)) + " to "
                + CostJson.text(Reckoning.price(item, after)) + percent;
    }

    /** The causes, the largest first; those without an amount of their own last. */
    List<Cause> of(Recipe recipe, Moved.Effects effects) {
        Reach reach = Reach.of(recipe.id(), mixture.of(0), mixture.of(Mixture.MIXES - 1));
        List<Cause> causes = new ArrayList<>(prices(recipe, reach, effects.price()));
        documents(reach, Kind.YIELD, effects.yield(), causes);
        documents(reach, Kind.PORTION, effects.portion(), causes);
        documents(reach, Kind.RECIPE, effects.recipe(), causes);
        causes.sort(Comparator.comparing(
                (Cause cause) -> cause.amount().map(Causes::size).orElse(null),
                Comparator.nullsLast(Comparator.reverseOrder())));
        return causes;
    }

    private static BigDecimal size(Money amount) {
        return amount.amount().abs();
    }

    private List<Cause> prices(Recipe recipe, Reach reach, Money effect) {
        List<String> items =
                reach.items().stream().filter(movedPrices::containsKey).toList();
        double[] parts = new double[items.size()];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = part(recipe, items.get(i));
        }
        List<Money> exact = Shares.exact(parts, effect);
        List<Cause> causes = new ArrayList<>();
        for (int i = 0; i < parts.length; i++) {
            if (!exact.get(i).isZero()) {
                String id = items.get(i);
                causes.add(new Cause(Kind.PRICE, id, Optional.of(exact.get(i)), movedPrices.get(id)));
            }
        }
        return causes;
    }

    /** Costs are linear in prices, so that each price has its own part of what all of them do. */
    private double part(Recipe recipe, String item) {
        double sum = 0;
        for (int mix = 0; mix < Mixture.MIXES; mix++) {
            Structure structure = mixture.of(mix);
            MenuPrice menu = menu(recipe, mix);
            double change = structure.perUnit(item, mixture.now().quotes())
                    - structure.perUnit(item, mixture.then().quotes());
            if (!Double.isNaN(change) && !structure.isMade(item)) {
                sum += Shares.weight(Integer.bitCount(mix), KINDS) * structure.slope(recipe.id(), menu, item) * change;
            }
        }
        return sum;
    }

    private MenuPrice menu(Recipe recipe, int mix) {
        MenuPrice now = recipe.menu().orElseThrow();
        return (mix & Mixture.RECIPE) != 0
                ? now
                : Optional.ofNullable(mixture.then().recipes().get(recipe.id()))
                        .flatMap(Recipe::menu)
                        .orElse(now);
    }

    private void documents(Reach reach, Kind kind, Money effect, List<Cause> causes) {
        if (effect.isZero()) {
            return;
        }
        Map<String, String> found = changes.within(reach, kind);
        Optional<Money> amount = found.size() == 1 ? Optional.of(effect) : Optional.empty();
        found.forEach((subject, text) -> causes.add(new Cause(kind, subject, amount, text)));
    }
}
