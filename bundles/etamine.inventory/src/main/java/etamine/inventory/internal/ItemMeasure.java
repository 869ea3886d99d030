package etamine.inventory.internal;

import etamine.inventory.RefusedException;
import etamine.kitchen.item.Item;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How one item is measured on the shelf.
 *
 * @param id the item
 * @param item what is known of it; empty when nobody knows it, and then a quantity's own dimension stands
 */
record ItemMeasure(String id, Optional<Item> item) {

    /** The quantity in base units of the dimension the item is kept in, or a refusal that names what is missing. */
    Amount kept(Quantity quantity) {
        Conversion conversion = conversion(quantity);
        if (conversion instanceof Conversion.Missing missing) {
            throw RefusedException.missing(id, missing.text());
        }
        Quantity kept = conversion.orThrow();
        return new Amount(kept.unit().dimension(), kept.toBase());
    }

    /**
     * A size in the ledger.
     *
     * @param dimension what it measures
     * @param base how many base units
     */
    record Amount(Dimension dimension, long base) {}

    /** The same without refusing. */
    Conversion conversion(Quantity quantity) {
        Optional<Dimension> dimension = dimension();
        if (dimension.isPresent()) {
            return item.orElseThrow().converter().convert(quantity, dimension.get());
        }
        if (quantity.unit().dimension() != Dimension.WORD) {
            return new Conversion.Converted(quantity, List.of());
        }
        return new Conversion.Missing(quantity.unit(), Unit.G, "Add what 1 " + quantity.unit() + " weighs.");
    }

    /** The dimension it is kept in: that of its count unit, or what its own word comes to. */
    private Optional<Dimension> dimension() {
        return item.flatMap(known -> known.dimension() != Dimension.WORD
                ? Optional.of(known.dimension())
                : Stream.of(Dimension.MASS, Dimension.VOLUME, Dimension.COUNT, Dimension.PORTION)
                        .filter(dimension -> known.converter().convert(Quantity.of(1, known.countIn()), dimension)
                                instanceof Conversion.Converted)
                        .findFirst());
    }

    /** A size of the ledger in the unit the item is counted in; as it is when it cannot be converted. */
    Quantity shown(Dimension dimension, long base) {
        Quantity quantity = Quantity.fromBase(dimension, base);
        if (item.isEmpty()) {
            return quantity.in(large(dimension));
        }
        return counted(quantity).orElse(quantity.in(large(dimension)));
    }

    /** A quantity in the unit the item is counted in; empty when it cannot be converted. */
    Optional<Quantity> counted(Quantity quantity) {
        return like(quantity, countIn(quantity));
    }

    /** The unit the item is counted in; of an unknown one, the usual unit of the quantity's dimension. */
    Unit countIn(Quantity quantity) {
        return item.map(Item::countIn).orElseGet(() -> large(quantity.unit().dimension()));
    }

    /** A quantity in a unit, directly or through the item's measures. */
    Optional<Quantity> like(Quantity quantity, Unit unit) {
        if (quantity.unit().isLike(unit)) {
            return Optional.of(quantity.in(unit));
        }
        return item.map(known -> known.converter().convert(quantity, unit))
                .filter(Conversion.Converted.class::isInstance)
                .map(Conversion::orThrow);
    }

    static Unit large(Dimension dimension) {
        return switch (dimension) {
            case MASS -> Unit.KG;
            case VOLUME -> Unit.L;
            case COUNT -> Unit.EA;
            case PORTION, WORD -> Unit.PORTION;
        };
    }
}
