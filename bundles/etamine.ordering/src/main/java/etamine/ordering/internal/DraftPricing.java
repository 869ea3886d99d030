package etamine.ordering.internal;

import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.SupplierOrder;
import etamine.kitchen.supply.Catalogue;
import etamine.kitchen.supply.Offer;
import etamine.measures.Money;
import etamine.measures.Ratio;
import etamine.storage.BookException;
import java.util.List;
import java.util.Optional;

/** Prices lines that somebody changes by hand. */
final class DraftPricing {
    static final String BY_HAND = "Set by hand.";

    private DraftPricing() {}

    /** A line of so many packs of an offer. */
    static OrderLine line(Catalogue catalogue, Offer offer, long packs, String why) {
        Money price = catalogue
                .packPrice(offer, packs)
                .orElseThrow(() -> new BookException(
                        BookException.Reason.OTHER,
                        "What a pack of " + offer.code() + " costs is not known; add what it weighs to the offer."));
        return new OrderLine(
                offer.item(), offer.code(), packs, offer.pack(), price, amount(price, packs), List.of(why));
    }

    /** The line with other packs, at the price the catalogue has for them, else at the price it had. */
    static OrderLine priced(Optional<Catalogue> catalogue, SupplierOrder order, OrderLine line, long packs) {
        Optional<OrderLine> offered = packs <= 0
                ? Optional.empty()
                : catalogue.flatMap(known -> offer(known, order, line)
                        .filter(offer -> known.packPrice(offer, packs).isPresent())
                        .map(offer -> line(known, offer, packs, BY_HAND)));
        return offered.orElseGet(() -> new OrderLine(
                line.item(),
                line.code(),
                packs,
                line.pack(),
                line.packPrice(),
                amount(line.packPrice(), packs),
                List.of(BY_HAND)));
    }

    /** Where a line of the same item, article number and pack stands; -1 when there is none. */
    static int place(List<OrderLine> lines, OrderLine wanted) {
        for (int i = 0; i < lines.size(); i++) {
            OrderLine line = lines.get(i);
            boolean sameArticle =
                    line.item().equals(wanted.item()) && line.code().equals(wanted.code());
            if (sameArticle && line.pack().equals(wanted.pack())) {
                return i;
            }
        }
        return -1;
    }

    private static Optional<Offer> offer(Catalogue catalogue, SupplierOrder order, OrderLine line) {
        return catalogue.offersFor(line.item(), order.deliver()).stream()
                .filter(offer -> offer.supplier().equals(order.supplier())
                        && offer.code().equals(line.code())
                        && offer.pack().equals(line.pack()))
                .findFirst();
    }

    private static Money amount(Money price, long packs) {
        return price.times(Ratio.of(packs)).rounded();
    }
}
