package etamine.modules;

/** How a module is doing. */
public enum ModuleState {
    /** It works, or will as soon as a book is open. */
    RUNNING,
    /** It is installed and does nothing. */
    STOPPED,
    /** It was started and waits for a service that nobody offers. */
    WAITING,
    /** It was to start and could not; its failure says why. */
    FAILED
}
