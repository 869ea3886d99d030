package etamine.book.internal.exchange;

/** A file that cannot be read as the exchange form at all; the message says what to do. */
final class RefusedFile extends Exception {
    private static final long serialVersionUID = 1L;

    private final String pointer;

    RefusedFile(String pointer, String problem) {
        super(problem);
        this.pointer = pointer;
    }

    /** How far it was understood, as a JSON pointer. */
    String pointer() {
        return pointer;
    }
}
