package etamine.base.verb;

/** A call that could not be carried out; the message is one sentence that says what to do. */
public class VerbException extends Exception {
    private static final long serialVersionUID = 1L;

    private final Outcome outcome;

    /** A failure that ends the console with {@code outcome}. */
    public VerbException(Outcome outcome, String message) {
        super(message);
        this.outcome = outcome;
    }

    /** A call with wrong arguments. */
    public static VerbException wrongCall(String message) {
        return new VerbException(Outcome.WRONG_CALL, message);
    }

    /** Input that was not accepted; nothing was written. */
    public static VerbException rejected(String message) {
        return new VerbException(Outcome.REJECTED, message);
    }

    /** How the console ends. */
    public Outcome outcome() {
        return outcome;
    }
}
