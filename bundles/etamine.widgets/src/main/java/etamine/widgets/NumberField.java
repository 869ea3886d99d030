package etamine.widgets;

import java.math.BigDecimal;
import org.eclipse.swt.widgets.Composite;

/** A plain number between two limits, such as covers, days or a percentage. */
public final class NumberField extends EntryField<BigDecimal> {
    private final BigDecimal least;
    private final BigDecimal most;
    private final int decimals;

    /** A field for numbers from {@code least} to {@code most} with at most that many decimals. */
    public NumberField(Composite parent, String least, String most, int decimals) {
        super(parent, least + " \u2013 " + most);
        this.least = new BigDecimal(least);
        this.most = new BigDecimal(most);
        this.decimals = decimals;
    }

    /** The value as a whole number; zero when there is none. */
    public int whole() {
        return value().map(BigDecimal::intValue).orElse(0);
    }

    @Override
    protected BigDecimal read(String typed) {
        BigDecimal number = Numbers.decimal(typed, "Write a number from " + least + " to " + most + ".");
        if (number.compareTo(least) < 0 || number.compareTo(most) > 0) {
            throw new IllegalArgumentException("Write a number from " + least + " to " + most + ".");
        }
        if (number.stripTrailingZeros().scale() > decimals) {
            throw new IllegalArgumentException(
                    decimals == 0 ? "Write a whole number." : "Write at most " + decimals + " decimals.");
        }
        return number;
    }

    @Override
    protected String write(BigDecimal value) {
        return value.toPlainString();
    }
}
