package etamine.ordering.internal.plan;

import etamine.measures.Money;
import etamine.ordering.internal.plan.SupplierModel.Slot;
import java.time.LocalDate;
import java.util.Optional;

/**
 * So many packs of an offer for one delivery.
 *
 * @param item the item
 * @param offer the offer
 * @param slot the delivery
 * @param packs how many packs in all, more than 0
 * @param added how many of them only reach the supplier's minimum
 */
public record Purchase(ItemModel item, OfferModel offer, Slot slot, long packs, long added) {

    /** What it costs. */
    public Money amount() {
        return offer.amount(packs);
    }

    /** The same purchase with other packs. */
    public Purchase withPacks(long other, long otherAdded) {
        return new Purchase(item, offer, slot, other, otherAdded);
    }

    /** What comes, as the simulation sees it. */
    public Batch batch(LocalDate start) {
        return new Batch(
                slot.day(),
                Math.multiplyExact(packs, offer.content()),
                offer.lastDay(start, slot.day()),
                "the delivery of " + PlanWords.day(start.plusDays(slot.day())),
                Optional.of(amount()));
    }
}
