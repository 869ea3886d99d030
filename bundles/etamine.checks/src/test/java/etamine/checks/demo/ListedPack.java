package etamine.checks.demo;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.kitchen.item.Item;
import etamine.measures.Dimension;
import etamine.measures.Pack;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.Period;

/**
 * A pack on a supplier's list, reckoned in base units of its item.
 *
 * @param supplier who sells it
 * @param code its article number
 * @param content base units in one pack
 * @param perBase what one base unit costs
 * @param life how long it keeps from delivery
 * @param from the first day the price holds
 */
record ListedPack(String supplier, String code, long content, Ratio perBase, Period life, LocalDate from) {
    private static final int PLACES = 4;

    static ListedPack of(JsonNode offer, Item item) {
        long content = base(item, Pack.parse(offer.path("pack").asText()).total());
        JsonNode price = offer.path("price");
        long priced =
                price.has("per") ? base(item, Quantity.parse(price.path("per").asText())) : content;
        return new ListedPack(
                offer.path("supplier").asText(),
                offer.path("code").asText(),
                content,
                Ratio.parse(price.path("amount").asText()).dividedBy(Ratio.of(priced)),
                Period.parse(offer.path("lifeOnArrival").asText("P0D")),
                LocalDate.parse(offer.path("from").asText()));
    }

    /** What the item costs at this price, per kg, l or piece. */
    UnitPrice unitPrice(Dimension dimension) {
        return unitPrice(perBase, dimension);
    }

    /** A price of a base unit per kg, l or piece. */
    static UnitPrice unitPrice(Ratio perBase, Dimension dimension) {
        Quantity per = switch (dimension) {
            case MASS -> Quantity.of(1, Unit.KG);
            case VOLUME -> Quantity.of(1, Unit.L);
            default -> Quantity.of(1, Unit.basic(dimension));
        };
        return new UnitPrice(perBase.times(Ratio.of(per.toBase())).toDecimal(PLACES, RoundingMode.HALF_UP), per);
    }

    private static long base(Item item, Quantity quantity) {
        return item.converter().convert(quantity, item.dimension()).orThrow().toBase();
    }
}
