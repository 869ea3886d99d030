package etamine.catalogue.internal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.supply.Offer;
import etamine.measures.Pack;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.math.BigDecimal;
import java.util.Optional;

/** An offer as it is written. */
final class OfferForm {
    /** Stands in where a pack cannot be read; such an offer is never kept. */
    private static final Pack NO_PACK = new Pack(Ratio.ONE, Quantity.of(1, Unit.EA));

    private OfferForm() {}

    static Offer read(EntryReader reader) {
        if (!reader.has("pack")) {
            reader.trouble("pack", "Write what one pack holds, such as 6 x 1 l.");
        }
        if (!reader.has("price")) {
            reader.trouble("price", "Write the price, such as {\"amount\": \"24.60\"}.");
        }
        EntryReader price = reader.part("price");
        return new Offer(
                reader.needed("supplier"),
                reader.needed("item"),
                reader.text("code").strip(),
                reader.text("gtin").strip(),
                reader.read("pack", Pack::parse).orElse(NO_PACK),
                reader.has("price") ? amount(price) : BigDecimal.ZERO,
                price.has("per") ? price.positive("per") : Optional.empty(),
                reader.each("breaks").stream()
                        .flatMap(step -> step(step).stream())
                        .toList(),
                reader.period("lifeOnArrival"),
                reader.date("from"));
    }

    private static BigDecimal amount(EntryReader price) {
        if (!price.has("amount")) {
            price.trouble("amount", "Write the amount of the price, such as 24.60.");
        }
        return price.decimal("amount").orElse(BigDecimal.ZERO);
    }

    private static Optional<Offer.Break> step(EntryReader reader) {
        Optional<Integer> packs = reader.wholeFrom("fromPacks", 1);
        if (!reader.has("fromPacks")) {
            reader.trouble("fromPacks", "Write from how many packs the lower price holds.");
        }
        BigDecimal amount = amount(reader);
        return packs.map(count -> new Offer.Break(count, amount));
    }

    /** Supplier and article number, or supplier and item where there is no number. */
    static String article(Offer offer) {
        return offer.supplier() + "/" + (offer.code().isEmpty() ? offer.item() : offer.code());
    }

    /** The article and the day its price holds from, so that an article can have an old, a present and a next price. */
    static String id(Offer offer) {
        return article(offer) + offer.from().map(from -> "@" + from).orElse("");
    }

    /** Writes an offer over what is there, keeping members this program does not know. */
    static ObjectNode write(Offer offer, ObjectNode onto) {
        onto.put("supplier", offer.supplier()).put("item", offer.item());
        Members.text(onto, "code", offer.code());
        Members.text(onto, "gtin", offer.gtin());
        onto.put("pack", offer.pack().toString());
        ObjectNode price =
                Members.object(onto, "price").put("amount", offer.amount().toPlainString());
        Members.text(price, "per", offer.per().map(Quantity::toString).orElse(""));
        steps(offer, onto);
        Members.text(
                onto,
                "lifeOnArrival",
                offer.lifeOnArrival().map(Object::toString).orElse(""));
        Members.text(onto, "from", offer.from().map(Object::toString).orElse(""));
        return onto;
    }

    private static void steps(Offer offer, ObjectNode onto) {
        onto.remove("breaks");
        if (offer.breaks().isEmpty()) {
            return;
        }
        ArrayNode steps = onto.putArray("breaks");
        offer.breaks()
                .forEach(step -> steps.addObject()
                        .put("fromPacks", step.fromPacks())
                        .put("amount", step.amount().toPlainString()));
    }
}
