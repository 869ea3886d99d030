package etamine.modules;

/** A module could not be started or stopped; the message is a sentence for the person at the screen. */
public class ModuleException extends Exception {
    private static final long serialVersionUID = 1L;

    /** A refusal or failure with its reason. */
    public ModuleException(String message) {
        super(message);
    }

    /** A failure with its reason and cause. */
    public ModuleException(String message, Throwable cause) {
        super(message, cause);
    }
}
