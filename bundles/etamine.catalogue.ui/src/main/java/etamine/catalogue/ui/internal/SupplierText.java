package etamine.catalogue.ui.internal;

import etamine.kitchen.supply.CutOff;
import etamine.kitchen.supply.Supplier;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A supplier's facts as text, and back; what cannot be read is refused with a sentence. */
final class SupplierText {
    private static final List<String> DAYS = List.of("MO", "TU", "WE", "TH", "FR", "SA", "SU");
    private static final LocalTime USUAL_CUT_OFF = LocalTime.of(18, 0);

    private SupplierText() {}

    static String of(Supplier supplier, SupplierField field) {
        return switch (field) {
            case NAME -> supplier.name();
            case EMAIL -> supplier.email();
            case DAYS -> days(supplier.deliveryDays());
            case CUT_OFF_DAYS ->
                supplier.cutOff()
                        .map(cutOff -> String.valueOf(cutOff.daysBefore()))
                        .orElse("");
            case CUT_OFF_TIME ->
                supplier.cutOff().map(cutOff -> cutOff.time().toString()).orElse("");
            case MINIMUM -> supplier.minimum().toString();
            case FEE -> supplier.fee().toString();
        };
    }

    static String days(Set<DayOfWeek> days) {
        return days.stream().sorted().map(day -> DAYS.get(day.ordinal())).collect(Collectors.joining(" "));
    }

    /** The supplier with one fact typed anew; throws {@link IllegalArgumentException} with a sentence. */
    static Supplier with(Supplier supplier, SupplierField field, String typed) {
        String text = typed.strip();
        return switch (field) {
            case NAME -> copy(supplier, needed(text), supplier.email(), supplier.deliveryDays(), supplier.cutOff());
            case EMAIL -> copy(supplier, supplier.name(), email(text), supplier.deliveryDays(), supplier.cutOff());
            case DAYS -> copy(supplier, supplier.name(), supplier.email(), readDays(text), supplier.cutOff());
            case CUT_OFF_DAYS, CUT_OFF_TIME ->
                copy(
                        supplier,
                        supplier.name(),
                        supplier.email(),
                        supplier.deliveryDays(),
                        cutOff(supplier.cutOff(), field, text));
            case MINIMUM -> money(supplier, amount(text, supplier.minimum()), supplier.fee());
            case FEE -> money(supplier, supplier.minimum(), amount(text, supplier.fee()));
        };
    }

    private static Supplier copy(
            Supplier supplier, String name, String email, Set<DayOfWeek> days, Optional<CutOff> cutOff) {
        return new Supplier(supplier.id(), name, email, days, cutOff, supplier.minimum(), supplier.fee());
    }

    private static Supplier money(Supplier supplier, Money minimum, Money fee) {
        return new Supplier(
                supplier.id(),
                supplier.name(),
                supplier.email(),
                supplier.deliveryDays(),
                supplier.cutOff(),
                minimum,
                fee);
    }

    private static String needed(String text) {
        if (text.isEmpty()) {
            throw new IllegalArgumentException("Give the supplier a name.");
        }
        return text;
    }

    private static String email(String text) {
        if (!text.isEmpty() && !text.matches("[^@\\s]+@[^@\\s]+")) {
            throw new IllegalArgumentException("Write an address such as orders@dairy.example, or nothing.");
        }
        return text;
    }

    private static Set<DayOfWeek> readDays(String text) {
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        for (String word : text.toUpperCase(Locale.ROOT).split("[,;\\s]+")) {
            if (word.isEmpty()) {
                continue;
            }
            int day = word.length() < 2 ? -1 : DAYS.indexOf(word.substring(0, 2));
            if (day < 0) {
                throw new IllegalArgumentException("Write weekdays as " + String.join(" ", DAYS) + ".");
            }
            days.add(DayOfWeek.of(day + 1));
        }
        return days;
    }

    private static Optional<CutOff> cutOff(Optional<CutOff> now, SupplierField field, String text) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (field == SupplierField.CUT_OFF_DAYS) {
            if (!text.matches("[0-9]{1,2}")) {
                throw new IllegalArgumentException("Write whole days, such as 1; nothing for no cut-off.");
            }
            return Optional.of(
                    new CutOff(Integer.parseInt(text), now.map(CutOff::time).orElse(USUAL_CUT_OFF)));
        }
        return Optional.of(new CutOff(now.map(CutOff::daysBefore).orElse(1), time(text)));
    }

    private static LocalTime time(String text) {
        try {
            return LocalTime.parse(text.matches("[0-9]:.*") ? "0" + text : text);
        } catch (DateTimeException unreadable) {
            throw new IllegalArgumentException("Write a time such as 22:00; nothing for no cut-off.", unreadable);
        }
    }

    private static Money amount(String text, Money now) {
        String plain = text.replace(',', '.');
        BigDecimal amount = plain.isEmpty()
                ? BigDecimal.ZERO
                : Money.parse(plain, now.currency()).amount();
        if (amount.signum() < 0) {
            throw new IllegalArgumentException("An amount cannot be less than zero.");
        }
        return Money.of(amount, now.currency());
    }
}
