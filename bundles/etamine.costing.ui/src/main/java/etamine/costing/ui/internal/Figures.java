package etamine.costing.ui.internal;

import etamine.kitchen.cost.PriceOrigin;
import etamine.kitchen.house.Kitchen;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Figures as they are read on the costing bench. A figure and its unit never part at the end of a line. */
final class Figures {
    static final String ARROW = " \u2192 ";
    static final String NONE = "\u2013";
    private static final String TOGETHER = "\u00a0";
    private static final String MINUS = "\u2212";
    private static final int PRICE_PLACES = 4;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter YEAR = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);
    private final Kitchen kitchen;

    Figures(Kitchen kitchen) {
        this.kitchen = kitchen;
    }

    /** An amount without its currency: {@code 4.10}. */
    static String money(Money amount) {
        return amount.rounded().toString().replace("-", MINUS);
    }

    /** An amount with its currency: {@code 4.10 EUR}. */
    String full(Money amount) {
        return money(amount) + TOGETHER + currency();
    }

    /** A difference with its sign: {@code +0.15}. */
    static String change(Money difference) {
        Money rounded = difference.rounded();
        return (rounded.signum() > 0 ? "+" : "") + money(rounded);
    }

    /** Both figures where they differ as shown, else one. */
    static String both(String now, String then) {
        return now.equals(then) ? now : now + ARROW + then;
    }

    /** A percentage with one decimal: {@code 19.9 %}. */
    static String percent(BigDecimal value) {
        return value.setScale(1, RoundingMode.HALF_UP).toPlainString().replace("-", MINUS) + TOGETHER + "%";
    }

    /** A percentage as it was written, without needless zeros: {@code 13.5 %}. */
    static String percentAsWritten(BigDecimal value) {
        return plain(value).replace("-", MINUS) + TOGETHER + "%";
    }

    /** A change in percent with its sign: {@code +14.0 %}. */
    static String percentChange(BigDecimal value) {
        return (value.signum() > 0 ? "+" : "") + percent(value);
    }

    /** A quantity in the kitchen's measures. */
    String quantity(Quantity quantity) {
        return QuantityText.format(quantity, kitchen.house().measures()).replace(" ", TOGETHER);
    }

    /** A price for one unit or so many: {@code 34.00 / kg}. */
    static String price(UnitPrice price) {
        BigDecimal amount =
                price.amount().setScale(PRICE_PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
        String per = price.per().toString();
        return amount.setScale(Math.max(2, amount.scale())).toPlainString() + TOGETHER + "/" + TOGETHER
                + (per.startsWith("1 ") ? per.substring(2) : per).replace(" ", TOGETHER);
    }

    /** A day near today by its weekday, another by its year. */
    String day(LocalDate day) {
        boolean near = Math.abs(day.toEpochDay() - kitchen.today().toEpochDay()) < 300;
        return day.format(near ? DAY : YEAR).replace(" ", TOGETHER);
    }

    /** Where a price comes from, since when, and how old it is. */
    String origin(PriceOrigin origin) {
        String since = origin.since()
                .filter(day -> !origin.text().contains(day.toString()))
                .map(day -> ", since " + day(day))
                .orElse("");
        String age = origin.daysOld()
                .map(days -> days == 0 ? ", of today" : days == 1 ? ", 1 day old" : ", " + days + " days old")
                .orElse("");
        return origin.text() + since + age;
    }

    String currency() {
        return kitchen.house().currency().getCurrencyCode();
    }

    /** A number without needless zeros. */
    static String plain(BigDecimal value) {
        BigDecimal shortest = value.stripTrailingZeros();
        return shortest.setScale(Math.max(0, shortest.scale())).toPlainString();
    }
}
