package etamine.kitchen.house;

import etamine.measures.MeasureStyle;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.Currency;

/**
 * A kitchen's own settings.
 *
 * @param name as it stands on orders
 * @param currency of every price in the book
 * @param zone the time zone of its clock, for cut-offs and days
 * @param measures how quantities are shown; nothing stored depends on it
 */
public record House(String name, Currency currency, ZoneId zone, MeasureStyle measures) {

    /** Money of this house. */
    public Money money(BigDecimal amount) {
        return new Money(amount, currency);
    }
}
