package etamine.ordering.internal;

import etamine.kitchen.item.Item;
import etamine.measures.Conversion;
import etamine.measures.Conversion.Converted;
import etamine.measures.Converter;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import java.util.List;
import java.util.Optional;

/** Brings quantities of an item into the dimension it is counted in. */
final class Counting {
    private Counting() {}

    /** The quantity in the unit the item is counted in; an unknown item is counted in what the quantity has. */
    static Conversion count(Optional<Item> item, Quantity quantity) {
        if (item.isEmpty()) {
            return new Converted(quantity, List.of());
        }
        return item.get().converter().convert(quantity, item.get().countIn());
    }

    /** The quantity of an unknown item in the given unit, or of a known one in its own. */
    static Conversion count(Optional<Item> item, Quantity quantity, Unit unit) {
        return item.isPresent() ? count(item, quantity) : Converter.of().convert(quantity, unit);
    }

    /** The unit quantities of an item without facts are counted in: the basic one of the dimension. */
    static Unit unit(Optional<Item> item, Quantity quantity) {
        if (item.isPresent()) {
            return item.get().countIn();
        }
        return quantity.unit().dimension() == Dimension.WORD
                ? quantity.unit()
                : Unit.basic(quantity.unit().dimension());
    }
}
