package etamine.catalogue.internal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.supply.CutOff;
import etamine.kitchen.supply.Supplier;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A supplier as it is written; amounts get the house's currency only when they are read. */
record SupplierForm(
        String id,
        String name,
        String email,
        Set<DayOfWeek> days,
        Optional<CutOff> cutOff,
        BigDecimal minimum,
        BigDecimal fee) {
    private static final List<String> DAYS = List.of("MO", "TU", "WE", "TH", "FR", "SA", "SU");

    static SupplierForm read(EntryReader reader) {
        return new SupplierForm(
                reader.needed("id"),
                reader.needed("name"),
                reader.text("email"),
                days(reader),
                reader.has("cutOff") ? cutOff(reader.part("cutOff")) : Optional.empty(),
                reader.decimal("minimum").orElse(BigDecimal.ZERO),
                reader.decimal("fee").orElse(BigDecimal.ZERO));
    }

    private static Set<DayOfWeek> days(EntryReader reader) {
        EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        List<String> written = List.copyOf(reader.words("deliveryDays"));
        for (int i = 0; i < written.size(); i++) {
            int day = DAYS.indexOf(written.get(i));
            if (day < 0) {
                reader.trouble("deliveryDays/" + i, "Write a weekday as one of " + String.join(", ", DAYS) + ".");
            } else {
                days.add(DayOfWeek.of(day + 1));
            }
        }
        return days;
    }

    private static Optional<CutOff> cutOff(EntryReader reader) {
        Optional<LocalTime> time = reader.read("time", SupplierForm::time);
        Optional<Integer> days = reader.wholeFrom("daysBefore", 0);
        if (!reader.has("time")) {
            reader.trouble("time", "Write the time of the cut-off, such as 22:00.");
        }
        return time.map(moment -> new CutOff(days.orElse(0), moment));
    }

    private static LocalTime time(String text) {
        try {
            return LocalTime.parse(text);
        } catch (DateTimeException unreadable) {
            throw new IllegalArgumentException("“" + text + "” is not a time; write one such as 22:00.", unreadable);
        }
    }

    Supplier in(Currency currency) {
        return new Supplier(id, name, email, days, cutOff, Money.of(minimum, currency), Money.of(fee, currency));
    }

    static SupplierForm of(Supplier supplier) {
        return new SupplierForm(
                supplier.id(),
                supplier.name(),
                supplier.email(),
                supplier.deliveryDays(),
                supplier.cutOff(),
                supplier.minimum().amount(),
                supplier.fee().amount());
    }

    /** Writes the supplier over what is there, keeping members this program does not know. */
    ObjectNode write(ObjectNode onto) {
        onto.put("id", id).put("name", name);
        Members.text(onto, "email", email);
        ArrayNode written = onto.putArray("deliveryDays");
        days.stream().sorted().forEach(day -> written.add(code(day)));
        Members.amount(onto, "minimum", minimum);
        Members.amount(onto, "fee", fee);
        if (cutOff.isEmpty()) {
            onto.remove("cutOff");
        }
        cutOff.ifPresent(limit -> Members.object(onto, "cutOff")
                .put("daysBefore", limit.daysBefore())
                .put("time", limit.time().toString()));
        return onto;
    }

    static String code(DayOfWeek day) {
        return DAYS.get(day.getValue() - 1);
    }
}
