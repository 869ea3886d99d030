package etamine.measures;

/** Text that is not a quantity, or quantities that do not fit together; the message is a sentence saying what to do. */
public class MeasureException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** A failure in words. */
    public MeasureException(String message) {
        super(message);
    }
}
