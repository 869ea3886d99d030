package etamine.storage;

/** Something the book could not do; the message is a sentence for the person at the screen. */
public class BookException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final Reason reason;

    /** Why it failed, for callers that react differently. */
    public enum Reason {
        /** No book at that place. */
        MISSING,
        /** Something is already there. */
        EXISTS,
        /** A file, but not a book of this program. */
        FOREIGN,
        /** A book whose content fails its integrity check. */
        DAMAGED,
        /** Another process has it open. */
        IN_USE,
        /** It may only be read: written by a newer program, or no right to write. */
        READ_ONLY,
        /** Somebody else changed the document since it was read. */
        STALE,
        /** No room, or the medium failed. */
        NO_ROOM,
        /** Anything else. */
        OTHER
    }

    /** A failure with its reason. */
    public BookException(Reason reason, String message) {
        super(message);
        this.reason = reason;
    }

    /** A failure with its reason and cause. */
    public BookException(Reason reason, String message, Throwable cause) {
        super(message, cause);
        this.reason = reason;
    }

    /** Why it failed. */
    public Reason reason() {
        return reason;
    }
}
