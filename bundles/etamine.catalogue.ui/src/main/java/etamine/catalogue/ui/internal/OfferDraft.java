package etamine.catalogue.ui.internal;

import etamine.kitchen.supply.Offer;
import etamine.measures.Pack;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * An offer as it is typed.
 *
 * @param item the item's id
 * @param code the article number
 * @param gtin the GS1 number
 * @param pack such as {@code 6 x 1 l}
 * @param price such as {@code 24.60}, or {@code 7.80 / 1 kg} when it is sold by weight
 * @param breaks such as {@code 5: 22.90, 10: 21.00}
 * @param keeps days from delivery
 * @param from the first day the price holds
 */
record OfferDraft(
        String item,
        String code,
        String gtin,
        String pack,
        String price,
        String breaks,
        String keeps,
        Optional<LocalDate> from) {

    static OfferDraft empty() {
        return new OfferDraft("", "", "", "", "", "", "", Optional.empty());
    }

    static OfferDraft of(Offer offer) {
        return new OfferDraft(
                offer.item(),
                offer.code(),
                offer.gtin(),
                offer.pack().toString(),
                price(offer),
                breaks(offer),
                offer.lifeOnArrival().map(OfferDraft::days).orElse(""),
                offer.from());
    }

    /** The same with a price from that day on. */
    OfferDraft from(LocalDate day) {
        return new OfferDraft(item, code, gtin, pack, price, breaks, keeps, Optional.of(day));
    }

    static String price(Offer offer) {
        return offer.amount().toPlainString()
                + offer.per().map(per -> " / " + per).orElse("");
    }

    static String breaks(Offer offer) {
        return offer.breaks().stream()
                .map(step -> step.fromPacks() + ": " + step.amount().toPlainString())
                .collect(Collectors.joining(", "));
    }

    private static String days(Period life) {
        return life.getMonths() == 0 && life.getYears() == 0 ? String.valueOf(life.getDays()) : life.toString();
    }

    /** The offer of a supplier; throws {@link IllegalArgumentException} with a sentence. */
    Offer read(String supplier) {
        if (item.isBlank()) {
            throw new IllegalArgumentException("Choose the item the offer is for.");
        }
        String[] sides = price.split("/", 2);
        Optional<Quantity> per = sides.length == 1 ? Optional.empty() : Optional.of(per(sides[1].strip()));
        return new Offer(
                supplier,
                item,
                code.strip(),
                gtin.replaceAll("[\\s-]", ""),
                Pack.parse(pack.strip()),
                amount(sides[0]),
                per,
                readBreaks(),
                keeps.isBlank() ? Optional.empty() : Optional.of(life(keeps.strip())),
                from);
    }

    private static Quantity per(String text) {
        return QuantityText.parse(text.matches("[\\p{L}_]+") ? "1 " + text : text);
    }

    private static BigDecimal amount(String text) {
        String plain = text.strip().replace(',', '.');
        if (!plain.matches("[0-9]{1,12}(\\.[0-9]{1,6})?")) {
            throw new IllegalArgumentException("Write the price such as 24.60, or 7.80 / kg when it is by weight.");
        }
        return new BigDecimal(plain);
    }

    private List<Offer.Break> readBreaks() {
        List<Offer.Break> read = new ArrayList<>();
        for (String step : breaks.split("[,;](?=\\s*[0-9]+\\s*:)")) {
            if (step.isBlank()) {
                continue;
            }
            String[] sides = step.split(":", 2);
            if (sides.length < 2 || !sides[0].strip().matches("[1-9][0-9]{0,5}")) {
                throw new IllegalArgumentException(
                        "Write lower prices as packs and price, such as 5: 22.90, 10: 21.00.");
            }
            read.add(new Offer.Break(Integer.parseInt(sides[0].strip()), amount(sides[1])));
        }
        return read;
    }

    private static Period life(String text) {
        if (text.matches("[0-9]{1,4}")) {
            return Period.ofDays(Integer.parseInt(text));
        }
        try {
            return Period.parse(text);
        } catch (DateTimeException unreadable) {
            throw new IllegalArgumentException("Write how many days it keeps from delivery, such as 9.", unreadable);
        }
    }
}
