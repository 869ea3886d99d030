package etamine.widgets;

import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.Currency;
import org.eclipse.swt.widgets.Composite;

/** An amount of money in one currency, with a point or a comma. */
public final class MoneyField extends EntryField<Money> {
    private final Currency currency;

    /** An empty field for amounts of that currency. */
    public MoneyField(Composite parent, Currency currency) {
        super(parent, "0.00 " + currency.getCurrencyCode());
        this.currency = currency;
    }

    @Override
    protected Money read(String typed) {
        String digits = typed.replace(currency.getCurrencyCode(), "")
                .replace(currency.getSymbol(), "")
                .replace("\u20ac", "EUR".equals(currency.getCurrencyCode()) ? "" : "\u20ac")
                .strip();
        return new Money(Numbers.decimal(digits, "Write an amount such as 12.50."), currency);
    }

    @Override
    protected String write(Money value) {
        BigDecimal amount = value.amount();
        int digits = Math.max(amount.scale(), currency.getDefaultFractionDigits());
        return amount.setScale(Math.max(0, digits)).toPlainString();
    }
}
