package etamine.base;

/** How much a {@link Problem} matters. */
public enum Severity {
    /** Worth knowing; nothing is wrong. */
    NOTE,
    /** A result may be off or incomplete until somebody looks. */
    WARNING,
    /** Something cannot be done or a figure cannot be trusted. */
    ERROR
}
