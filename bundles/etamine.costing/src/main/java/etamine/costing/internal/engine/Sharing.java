package etamine.costing.internal.engine;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How what remains of a batch's cost is shared among the things without a credit: by what each would cost to buy when all
 * of them say so, else by weight. One alone takes everything.
 */
final class Sharing {
    private final List<Make> makes;
    private final Map<String, Item> items;
    private final boolean byMarketValue;
    private final double[] shares;

    Sharing(Recipe recipe, Map<String, Item> items) {
        this.makes = recipe.makes();
        this.items = items;
        long sharing = makes.stream().filter(make -> make.credit().isEmpty()).count();
        this.byMarketValue = sharing > 1
                && makes.stream()
                        .filter(make -> make.credit().isEmpty())
                        .allMatch(make -> make.marketValue().isPresent())
                && worth() > 0;
        this.shares = new double[makes.size()];
        double total = 0;
        for (int i = 0; i < shares.length; i++) {
            if (makes.get(i).credit().isEmpty()) {
                shares[i] = sharing == 1 ? 1 : size(makes.get(i));
                total += shares[i];
            }
        }
        for (int i = 0; i < shares.length; i++) {
            shares[i] = total == 0 ? 0 : shares[i] / total;
        }
    }

    double[] shares() {
        return shares;
    }

    boolean byMarketValue() {
        return byMarketValue;
    }

    /** Why it cannot be shared; empty when it can. */
    Optional<String> problem() {
        for (double share : shares) {
            if (Double.isNaN(share)) {
                return Optional.of(
                        byMarketValue
                                ? "its cost cannot be shared by market value: add what one unit of everything it makes"
                                        + " is in the unit its market value is for."
                                : "its cost cannot be shared by weight: add what one unit weighs of everything it"
                                        + " makes.");
            }
        }
        return Optional.empty();
    }

    private double size(Make make) {
        return byMarketValue ? marketValue(make) : weight(make);
    }

    /** Market values that are all nothing say nothing: then weight decides. */
    private double worth() {
        double worth = 0;
        for (Make make : makes) {
            if (make.credit().isEmpty()) {
                double value = marketValue(make);
                worth += Double.isNaN(value) ? 1 : value;
            }
        }
        return worth;
    }

    private double marketValue(Make make) {
        UnitPrice value = make.marketValue().orElseThrow();
        Quantity made = make.quantity();
        if (made.unit().isLike(value.per().unit())) {
            return value.cost(made).doubleValue();
        }
        Item item = items.get(make.item());
        return item != null && item.converter().convert(made, value.per().unit()) instanceof Conversion.Converted done
                ? value.cost(done.quantity()).doubleValue()
                : Double.NaN;
    }

    private double weight(Make make) {
        Item item = items.get(make.item());
        return item != null
                        && item.converter().convert(make.quantity(), Dimension.MASS)
                                instanceof Conversion.Converted grams
                ? Reckoning.units(grams.quantity())
                : Double.NaN;
    }
}
