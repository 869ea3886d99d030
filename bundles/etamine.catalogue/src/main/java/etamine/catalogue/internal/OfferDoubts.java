package etamine.catalogue.internal;

import etamine.base.Problem;
import etamine.kitchen.supply.Offer;
import etamine.measures.Conversion;
import java.util.ArrayList;
import java.util.List;

/** What is wrong or doubtful about one offer. */
final class OfferDoubts {
    private OfferDoubts() {}

    static List<Problem> of(Offer offer, LiveCatalogue catalogue) {
        List<Problem> problems = new ArrayList<>();
        String where = Shelves.OFFERS + "/" + OfferForm.id(offer);
        if (!catalogue.suppliers().containsKey(offer.supplier())) {
            problems.add(Problem.error(
                    "unknown-supplier",
                    where,
                    "There is no supplier “" + offer.supplier() + "”; add it or remove the offer."));
        }
        if (catalogue.items().isPresent() && catalogue.item(offer.item()).isEmpty()) {
            problems.add(Problem.error(
                    "unknown-item", where, "There is no item “" + offer.item() + "”; add it or change the offer."));
        }
        if (catalogue.of(offer).content() instanceof Conversion.Missing missing) {
            problems.add(Problem.error(
                    "missing-equivalence",
                    where,
                    "How much of " + catalogue.name(offer.item()) + " a pack holds is not known. " + missing.text()));
        } else if (catalogue.of(offer).packPrice(1).isEmpty()) {
            problems.add(Problem.warning(
                    "missing-equivalence",
                    where,
                    "What a pack costs cannot be reckoned: the price is per "
                            + offer.per().orElseThrow() + " and the pack is " + offer.pack()
                            + "; add the measure that links the two."));
        }
        if (!offer.gtin().isEmpty() && !Gtin.sound(offer.gtin())) {
            problems.add(Problem.warning(
                    "gtin-check-digit",
                    where,
                    "The article number " + offer.gtin() + " has a wrong length or check digit; read it again."));
        }
        return problems;
    }
}
