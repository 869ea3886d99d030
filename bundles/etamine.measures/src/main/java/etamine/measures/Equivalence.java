package etamine.measures;

/**
 * Two quantities of one thing that are the same amount of it, such as {@code 1 cup = 150 g}.
 *
 * @param of one side; not zero
 * @param is the other side; not zero
 */
public record Equivalence(Quantity of, Quantity is) {

    /** Refuses sides that are zero or negative. */
    public Equivalence {
        if (of.amount().signum() <= 0 || is.amount().signum() <= 0) {
            throw new MeasureException("Both sides of a measure must be more than zero: " + of + " = " + is + ".");
        }
    }
}
