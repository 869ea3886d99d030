package etamine.kitchen.house;

import etamine.kitchen.allergen.DeclarationList;
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
 * @param allergenList by which allergens are declared
 */
public record House(String name, Currency currency, ZoneId zone, MeasureStyle measures, DeclarationList allergenList) {

    /** A house that declares allergens by the list of the European Union. */
    public House(String name, Currency currency, ZoneId zone, MeasureStyle measures) {
        this(name, currency, zone, measures, DeclarationList.EU);
    }

    /** The same house declaring allergens by another list. */
    public House withAllergenList(DeclarationList list) {
        return new House(name, currency, zone, measures, list);
    }

    /** Money of this house. */
    public Money money(BigDecimal amount) {
        return new Money(amount, currency);
    }
}
