package etamine.inventory;

import java.util.Optional;

/** Stock that was not moved; nothing was written, and the message is a sentence that says what to do. */
public class RefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final Reason reason;
    private final String missing;

    /** Why it was refused, for callers that react differently. */
    public enum Reason {
        /** Nobody knows the item. */
        UNKNOWN_ITEM,
        /** There is no such place. */
        UNKNOWN_PLACE,
        /** The quantity cannot be brought to what the item is counted in. */
        MISSING_EQUIVALENCE,
        /** There is no such order, or it has come already. */
        ORDER,
        /** There is no such recipe. */
        RECIPE,
        /** There is no such movement, or it was taken back already. */
        MOVEMENT,
        /** An amount, a kind or a line that makes no sense. */
        INPUT
    }

    /** A refusal with its reason. */
    public RefusedException(Reason reason, String message) {
        this(reason, message, "");
    }

    private RefusedException(Reason reason, String message, String missing) {
        super(message);
        this.reason = reason;
        this.missing = missing;
    }

    /** A refusal for want of an equivalence; {@code missing} is the sentence that asks for it. */
    public static RefusedException missing(String item, String missing) {
        return new RefusedException(
                Reason.MISSING_EQUIVALENCE,
                "The quantity cannot be brought to what “" + item + "” is counted in. " + missing,
                missing);
    }

    /** Why it was refused. */
    public Reason reason() {
        return reason;
    }

    /** The equivalence to add, when that is the reason. */
    public Optional<String> missing() {
        return missing.isEmpty() ? Optional.empty() : Optional.of(missing);
    }
}
