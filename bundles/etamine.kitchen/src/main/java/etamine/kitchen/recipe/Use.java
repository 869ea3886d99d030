package etamine.kitchen.recipe;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.Conversion;
import etamine.measures.Converter;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.util.List;
import java.util.Optional;

/**
 * One line of what a recipe takes.
 *
 * @param item the item
 * @param quantity how much, on the stated basis
 * @param as the preparation; empty when used as it is
 * @param basis before or after trimming
 * @param substitutes items that may stand in for it; their allergens count like its own
 */
public record Use(String item, Quantity quantity, Optional<String> as, Basis basis, List<String> substitutes) {

    /** Copies the list. */
    public Use {
        substitutes = List.copyOf(substitutes);
    }

    /** A line that nothing may stand in for. */
    public Use(String item, Quantity quantity, Optional<String> as, Basis basis) {
        this(item, quantity, as, basis, List.of());
    }

    /** The same in another quantity. */
    public Use withQuantity(Quantity changed) {
        return new Use(item, changed, as, basis, substitutes);
    }

    /** The same on another basis; the quantity stays as written. */
    public Use withBasis(Basis changed) {
        return new Use(item, quantity, as, changed, substitutes);
    }

    /**
     * The quantity as purchased, in the dimension the item is counted in, or the equivalence that is missing. Trimming
     * is reckoned by weight, and by volume for what is poured and has no weight for its volume: a bottle of which a
     * twentieth is spilt. Whole pieces and own words of which the preparation has no measure of its own are pieces before
     * trimming: three onions, peeled, are three onions. An unknown preparation trims nothing.
     */
    public Conversion asPurchased(Item bought) {
        Converter whole = bought.converter();
        Optional<Preparation> preparation = as.flatMap(bought::preparation);
        if (basis == Basis.AP || preparation.isEmpty() || pieces(preparation.get())) {
            return convert(as.map(bought::converter).orElse(whole), quantity, bought.countIn());
        }
        Ratio yield = preparation.get().yield();
        Conversion weight = bought.converter(preparation.get().name()).convert(quantity, Dimension.MASS);
        if (weight instanceof Conversion.Converted trimmed) {
            return convert(whole, trimmed.quantity().times(Ratio.ONE.dividedBy(yield)), bought.countIn());
        }
        boolean poured = quantity.unit().dimension() == Dimension.VOLUME
                && preparation.get().measures().isEmpty();
        if (poured || quantity.unit().isLike(bought.countIn())) {
            Conversion volume = convert(whole, quantity.times(Ratio.ONE.dividedBy(yield)), bought.countIn());
            return volume instanceof Conversion.Converted ? volume : weight;
        }
        return weight;
    }

    private boolean pieces(Preparation preparation) {
        Dimension dimension = quantity.unit().dimension();
        return (dimension == Dimension.COUNT || dimension == Dimension.WORD)
                && preparation.measures().stream()
                        .noneMatch(measure -> measure.of().unit().isLike(quantity.unit())
                                || measure.is().unit().isLike(quantity.unit()));
    }

    private static Conversion convert(Converter converter, Quantity quantity, Unit countIn) {
        return countIn.dimension() == Dimension.WORD
                ? converter.convert(quantity, countIn)
                : converter.convert(quantity, countIn.dimension());
    }
}
