package etamine.book.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.book.internal.exchange.Json;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.house.House;
import etamine.measures.MeasureStyle;
import etamine.storage.Codec;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Currency;
import java.util.Locale;

/** The house as a document, which is the section {@code kitchen} of the exchange form. */
public final class HouseForm implements Codec<House> {
    /** The shelf, the section and the only document on the shelf. */
    static final String KITCHEN = "kitchen";

    /** A house nobody has described yet. */
    static House undescribed() {
        return new House("My kitchen", Currency.getInstance("EUR"), ZoneId.systemDefault(), MeasureStyle.METRIC);
    }

    @Override
    public House read(String id, String json) {
        return read(Json.parse(json));
    }

    House read(JsonNode form) {
        return new House(
                form.path("name").asText(),
                currency(form.path("currency").asText()),
                zone(form.path("zone").asText()),
                style(form.path("measures").asText("metric")),
                DeclarationList.of(form.path("allergenList").asText(DeclarationList.EU.id())));
    }

    @Override
    public String write(House house) {
        return write(house, JsonNodeFactory.instance.objectNode()).toString();
    }

    /** Changes only what a house knows, so that other members of {@code form} stay. */
    ObjectNode write(House house, ObjectNode form) {
        return form.put("name", house.name())
                .put("currency", house.currency().getCurrencyCode())
                .put("zone", house.zone().getId())
                .put("measures", house.measures().name().toLowerCase(Locale.ROOT))
                .put("allergenList", house.allergenList().id());
    }

    /** The currency of that code, or a sentence saying what to write. */
    public static Currency currency(String code) {
        try {
            return Currency.getInstance(code);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "There is no currency " + code + "; write its three-letter code of ISO 4217, such as EUR.", e);
        }
    }

    /** The zone of that name, or a sentence saying what to write. */
    public static ZoneId zone(String id) {
        try {
            return ZoneId.of(id);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(
                    "There is no time zone " + id + "; write it as region and city, such as Europe/Dublin.", e);
        }
    }

    /** The style of that name, or a sentence saying what to write. */
    public static MeasureStyle style(String name) {
        try {
            return MeasureStyle.valueOf(name.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("Measures are metric or us, not " + name + ".", e);
        }
    }
}
