package etamine.catalogue;

/** A supplier or offer that was not saved; the message is a sentence that says what to do. */
public class RefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** A refusal with its reason. */
    public RefusedException(String message) {
        super(message);
    }
}
