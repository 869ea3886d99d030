package etamine.ordering.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.EntryTroubles;
import etamine.kitchen.par.Par;
import etamine.measures.Quantity;
import java.time.DayOfWeek;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;

/** A par as a document. */
final class ParForm {
    private static final int LETTERS = 2;

    private ParForm() {}

    static Par read(ObjectNode node) {
        EntryReader reader = new EntryReader(node);
        String item = reader.needed("item");
        Optional<Quantity> par = level(reader, "par");
        if (!reader.has("par")) {
            reader.trouble("par", "Write the par, such as 8 l.");
        }
        Map<DayOfWeek, Quantity> weekdays = weekdays(node, reader.part("weekdays"));
        Optional<Quantity> orderAt = level(reader, "orderAt");
        Optional<Quantity> capacity = level(reader, "capacity");
        EntryTroubles.throwIfAny(reader);
        return new Par(item, par.orElseThrow(), weekdays, orderAt, capacity);
    }

    private static Map<DayOfWeek, Quantity> weekdays(ObjectNode node, EntryReader reader) {
        Map<DayOfWeek, Quantity> levels = new EnumMap<>(DayOfWeek.class);
        for (Iterator<String> names = node.path("weekdays").fieldNames(); names.hasNext(); ) {
            String name = names.next();
            Optional<DayOfWeek> day = day(name);
            if (day.isEmpty()) {
                reader.trouble(name, "“" + name + "” is no weekday; write MO, TU, WE, TH, FR, SA or SU.");
            }
            day.ifPresent(known -> level(reader, name).ifPresent(level -> levels.put(known, level)));
        }
        return levels;
    }

    private static Optional<Quantity> level(EntryReader reader, String member) {
        Optional<Quantity> level = reader.quantity(member);
        if (level.isPresent() && level.get().signum() < 0) {
            reader.trouble(member, "Write 0 or more instead of " + level.get() + ".");
        }
        return level;
    }

    private static Optional<DayOfWeek> day(String letters) {
        for (DayOfWeek day : DayOfWeek.values()) {
            if (letters(day).equals(letters)) {
                return Optional.of(day);
            }
        }
        return Optional.empty();
    }

    static String letters(DayOfWeek day) {
        return day.name().substring(0, LETTERS);
    }

    /** The document with the par in it; members that say something else stay. */
    static ObjectNode write(ObjectNode node, Par par) {
        node.put("item", par.item()).put("par", par.par().toString());
        ObjectNode weekdays = EntryJson.empty();
        byDay(par.weekdays()).forEach((day, level) -> weekdays.put(letters(day), level.toString()));
        set(node, "weekdays", weekdays);
        put(node, "orderAt", par.orderAt());
        put(node, "capacity", par.capacity());
        return node;
    }

    private static Map<DayOfWeek, Quantity> byDay(Map<DayOfWeek, Quantity> weekdays) {
        Map<DayOfWeek, Quantity> levels = new EnumMap<>(DayOfWeek.class);
        levels.putAll(weekdays);
        return levels;
    }

    private static void set(ObjectNode node, String member, ObjectNode value) {
        if (value.isEmpty()) {
            node.remove(member);
        } else {
            node.set(member, value);
        }
    }

    private static void put(ObjectNode node, String member, Optional<Quantity> quantity) {
        if (quantity.isEmpty()) {
            node.remove(member);
        } else {
            node.put(member, quantity.get().toString());
        }
    }
}
