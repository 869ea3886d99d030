package etamine.book.internal.exchange;

/** JSON pointers (RFC 6901) as text. */
final class Pointers {
    private Pointers() {}

    /** The pointer to a member of what {@code parent} points to. */
    static String member(String parent, String name) {
        return parent + '/' + name.replace("~", "~0").replace("/", "~1");
    }

    /** The index that a pointer into an array starts with; -1 when it starts with none. */
    static int index(String pointer) {
        if (pointer.isEmpty()) {
            return -1;
        }
        int end = pointer.indexOf('/', 1);
        String first = pointer.substring(1, end < 0 ? pointer.length() : end);
        return first.matches("0|[1-9][0-9]{0,8}") ? Integer.parseInt(first) : -1;
    }

    /** What a pointer into an array points to within the element. */
    static String withinElement(String pointer) {
        int end = pointer.indexOf('/', 1);
        return end < 0 ? "" : pointer.substring(end);
    }

    /** What stands above the last step. */
    static String parent(String pointer) {
        return pointer.substring(0, Math.max(0, pointer.lastIndexOf('/')));
    }
}
