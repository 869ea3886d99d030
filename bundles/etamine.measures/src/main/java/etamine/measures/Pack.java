package etamine.measures;

/**
 * What is sold as one: so many of an equal content. Nested packs are kept as their product.
 *
 * @param count how many; more than zero
 * @param content what is in each; more than zero
 */
public record Pack(Ratio count, Quantity content) {

    /** Refuses packs of nothing. */
    public Pack {
        if (count.signum() <= 0 || content.signum() <= 0) {
            throw new MeasureException("A pack must hold more than nothing; write one such as 6 x 1 l.");
        }
    }

    /** Reads {@code 6 x 1 l}, {@code 4 ea}, {@code 25 kg} or {@code 6 x 4 x 100 g}. */
    public static Pack parse(String text) {
        return new QuantityReader(text).pack();
    }

    /** All that is in the pack, in the unit of the content. */
    public Quantity total() {
        return content.times(count);
    }

    /** The exchange form, exact: {@link #parse} reads an equal value from it. */
    @Override
    public String toString() {
        return count.equals(Ratio.ONE) ? content.toString() : count + " x " + content;
    }
}
