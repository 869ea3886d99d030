package etamine.launcher;

/** The program cannot start; the message says why, in a sentence or two for standard error. */
public final class StartException extends Exception {
    private static final long serialVersionUID = 1L;

    /** A failure with its reason. */
    public StartException(String message) {
        super(message);
    }

    /** A failure with its reason and cause. */
    public StartException(String message, Throwable cause) {
        super(message, cause);
    }
}
