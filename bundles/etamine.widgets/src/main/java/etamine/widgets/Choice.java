package etamine.widgets;

/**
 * One of several to choose from.
 *
 * @param id what it stands for
 * @param label what people read
 */
public record Choice(String id, String label) {

    /** A choice whose id is its label. */
    public static Choice of(String label) {
        return new Choice(label, label);
    }
}
