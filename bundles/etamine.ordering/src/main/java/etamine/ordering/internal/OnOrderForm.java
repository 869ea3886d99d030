package etamine.ordering.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.EntryTroubles;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Something on its way that was ordered outside the program, as a document. */
final class OnOrderForm {
    private OnOrderForm() {}

    /**
     * What the document says.
     *
     * @param supplier who brings it
     * @param item the item
     * @param code the article number; empty when the supplier's offer of the item says it
     * @param packs how many packs
     * @param deliver the day it should come
     */
    record Coming(String supplier, String item, String code, long packs, LocalDate deliver) {

        /** The document's identifier. */
        String id() {
            String line = supplier + "/" + item + "/" + deliver;
            return code.isEmpty() ? line : line + "/" + code;
        }

        /** The identifier under which all that comes with this delivery is received together. */
        String order() {
            return deliver + "-" + supplier;
        }
    }

    static Coming read(ObjectNode node) {
        EntryReader reader = new EntryReader(node);
        String supplier = reader.needed("supplier");
        String item = reader.needed("item");
        long packs = node.path("packs").asLong(0);
        if (packs <= 0) {
            reader.trouble("packs", "Write the number of packs, 1 or more.");
        }
        Optional<LocalDate> deliver = date(reader.needed("deliver"), reader);
        EntryTroubles.throwIfAny(reader);
        return new Coming(supplier, item, reader.text("code"), packs, deliver.orElseThrow());
    }

    private static Optional<LocalDate> date(String text, EntryReader reader) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException wrong) {
            reader.trouble("deliver", "“" + text + "” is not a date; write it as 2026-11-27.");
            return Optional.empty();
        }
    }
}
