package etamine.catalogue.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.supply.Offer;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.util.List;
import java.util.Optional;

/**
 * What a pack holds and costs in terms of its item.
 *
 * @param offer the offer
 * @param item the item; empty when nobody knows it, and then the pack's own unit stands
 */
record PackContent(Offer offer, Optional<Item> item) {

    /** The content in the item's count dimension. */
    Conversion content() {
        return inCount(offer.pack().total());
    }

    private Conversion inCount(Quantity quantity) {
        if (item.isEmpty()) {
            return new Conversion.Converted(quantity, List.of());
        }
        return item.get().dimension() == Dimension.WORD
                ? item.get().converter().convert(quantity, item.get().countIn())
                : item.get().converter().convert(quantity, item.get().dimension());
    }

    /** What one pack costs when that many are ordered, or which equivalence is missing. */
    Optional<Ratio> packPrice(long packs) {
        Ratio amount = Ratio.of(offer.amountFor(packs));
        if (offer.per().isEmpty()) {
            return Optional.of(amount);
        }
        Quantity per = offer.per().get();
        return like(offer.pack().total(), per).map(content -> amount.times(content.dividedBy(per)));
    }

    /** What one unit of the item's count dimension costs; empty when it does not compare. */
    Optional<Ratio> unitPrice() {
        Quantity priced = offer.per().orElseGet(offer.pack()::total);
        if (!(inCount(priced) instanceof Conversion.Converted converted)) {
            return Optional.empty();
        }
        return Optional.of(
                Ratio.of(offer.amount()).dividedBy(converted.quantity().amount()));
    }

    /** A quantity in the unit of another, directly or through the item's measures. */
    private Optional<Quantity> like(Quantity quantity, Quantity other) {
        if (quantity.unit().isLike(other.unit())) {
            return Optional.of(quantity.in(other.unit()));
        }
        return item.map(known -> known.converter().convert(quantity, other.unit()))
                .filter(Conversion.Converted.class::isInstance)
                .map(Conversion::orThrow);
    }
}
