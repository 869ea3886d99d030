package etamine.book.internal.exchange;

/** Hands kept sections to the modules that own them. */
@FunctionalInterface
public interface Adoption {

    /** Loads each kept section whose module is now there; one that does not fit stays kept. */
    void settle();
}
