package etamine.catalogue.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.kitchen.supply.Offer;
import etamine.measures.Conversion;
import etamine.measures.UnitPrice;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

/**
 * How the price of an offer comes about.
 *
 * @param offer the offer
 * @param catalogue what else is known
 * @param currency of the house
 */
record OfferStory(Offer offer, LiveCatalogue catalogue, Currency currency) {

    Explanation tell() {
        List<Explanation> parts = new ArrayList<>();
        parts.add(Explanation.leaf("Price", price(offer.amount().toPlainString()), since()));
        parts.add(Explanation.leaf("Pack", offer.pack().toString(), "as offered"));
        parts.add(content());
        offer.breaks()
                .forEach(step -> parts.add(Explanation.leaf(
                        "From " + step.fromPacks() + " packs",
                        price(step.amount().toPlainString()),
                        "as offered")));
        offer.lifeOnArrival()
                .ifPresent(life -> parts.add(
                        Explanation.leaf("Keeps from delivery", life.getDays() + " days", "as the supplier says")));
        OfferDoubts.of(offer, catalogue)
                .forEach(problem -> parts.add(Explanation.leaf("Look at this", "", problem.text())));
        return Explanation.of(catalogue.name(offer.item()) + ", " + offer.pack(), packPrice(), parts)
                .about(new Subject("item", offer.item()));
    }

    private String since() {
        return offer.from().map(from -> "holds from " + from).orElse("no first day stated");
    }

    private String price(String amount) {
        return amount + offer.per().map(per -> " per " + per).orElse(" per pack");
    }

    private String packPrice() {
        return catalogue
                .packPrice(offer, 1)
                .map(price -> price.rounded() + " " + currency + " a pack")
                .orElse("");
    }

    private Explanation content() {
        if (catalogue.of(offer).content() instanceof Conversion.Converted converted) {
            String how = converted.path().isEmpty()
                    ? "same kind of unit"
                    : "through "
                            + converted.path().stream()
                                    .map(link -> link.of() + " = " + link.is())
                                    .reduce((one, other) -> one + ", " + other)
                                    .orElse("");
            return Explanation.of(
                    "Content",
                    converted.quantity().toString(),
                    List.of(Explanation.leaf("Per unit", unitPrice(), how)));
        }
        return Explanation.leaf("Content", "not known", "a measure of the item is missing");
    }

    private String unitPrice() {
        return catalogue.unitPrice(offer).map(UnitPrice::toString).orElse("not known");
    }
}
