package etamine.costing.internal.words;

import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.costing.Days;
import etamine.measures.MeasureException;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Reads what costing's verbs are called with.
 *
 * @param call the call
 */
public record CallWords(VerbCall call) {
    private static final LocalDate LATEST = LocalDate.of(9999, 12, 30);

    /** The option as a number; a comma for the point will do. */
    public Optional<BigDecimal> number(String option) throws VerbException {
        Optional<String> text = call.option(option);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String plain = text.get().strip().replace(',', '.').replace("%", "").strip();
        if (plain.length() > 40 || !plain.matches("-?[0-9]+(\\.[0-9]+)?")) {
            throw VerbException.wrongCall(option + " wants a number such as 28 or 12.50, not “" + text.get() + "”.");
        }
        return Optional.of(new BigDecimal(plain));
    }

    /** The option as a whole number from 1 to the most there may be. */
    public int whole(String option, int most) throws VerbException {
        BigDecimal number = number(option).orElse(BigDecimal.ONE).stripTrailingZeros();
        if (number.scale() > 0 || number.signum() <= 0 || number.compareTo(BigDecimal.valueOf(most)) > 0) {
            throw VerbException.wrongCall(option + " wants a whole number from 1 to " + most + ".");
        }
        return number.intValueExact();
    }

    public Optional<Money> money(String option, Currency currency) throws VerbException {
        return number(option).map(amount -> new Money(amount, currency));
    }

    private Optional<LocalDate> day(String option) throws VerbException {
        Optional<String> text = call.option(option);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            LocalDate day = LocalDate.parse(text.get().strip());
            if (day.getYear() > 0 && day.isBefore(LATEST)) {
                return Optional.of(day);
            }
        } catch (DateTimeException unreadable) {
            // said below, as for a day too far off
        }
        throw VerbException.wrongCall(option + " wants a day such as 2026-11-24, not “" + text.get() + "”.");
    }

    /** The days of {@code --from} and {@code --to}; what is not given is the other's end of what there is. */
    public Days days(Supplier<Optional<Days>> known, LocalDate today) throws VerbException {
        Optional<LocalDate> from = day("--from");
        Optional<LocalDate> to = day("--to");
        Optional<Days> all = from.isPresent() && to.isPresent() ? Optional.empty() : known.get();
        LocalDate first = from.or(() -> all.map(Days::from)).or(() -> to).orElse(today);
        LocalDate last = to.or(() -> all.map(Days::to)).orElse(today);
        if (to.isEmpty() && first.isAfter(last)) {
            last = first;
        }
        return tried(first, last);
    }

    private static Days tried(LocalDate first, LocalDate last) throws VerbException {
        try {
            return new Days(first, last);
        } catch (IllegalArgumentException backwards) {
            throw VerbException.wrongCall(backwards.getMessage());
        }
    }

    /** Whether days were given at all. */
    public boolean saysDays() {
        return call.has("--from") || call.has("--to");
    }

    public Optional<Quantity> quantity(String option) throws VerbException {
        try {
            return call.option(option).map(QuantityText::parse);
        } catch (MeasureException unreadable) {
            throw VerbException.wrongCall(unreadable.getMessage());
        }
    }

    /** A price such as {@code 12.40}, which is a kg, or {@code 5.60 / 1 lb}. */
    public Optional<UnitPrice> price(String option) throws VerbException {
        Optional<String> text = call.option(option);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String[] sides = text.get().split("/|\\bper\\b", 2);
        String per = sides.length < 2 ? "1 kg" : sides[1].strip();
        try {
            UnitPrice price = UnitPrice.of(sides[0].strip(), per.matches("[0-9].*") ? per : "1 " + per);
            if (price.amount().signum() < 0) {
                throw VerbException.wrongCall(option + " cannot be less than zero.");
            }
            return Optional.of(price);
        } catch (MeasureException unreadable) {
            throw VerbException.wrongCall(
                    option + " wants a price such as 12.40 (a kg) or \"5.60 / lb\". " + unreadable.getMessage());
        }
    }
}
