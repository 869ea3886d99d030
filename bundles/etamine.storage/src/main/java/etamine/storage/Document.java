package etamine.storage;

import java.time.Instant;

/**
 * One revision of one document.
 *
 * @param id its identifier on the shelf
 * @param revision 1 for the first; grows by one with each change, also across removal
 * @param at when it was written
 * @param label what was done then
 * @param json the content, UTF-8 JSON; empty when this revision is a removal
 */
public record Document(String id, long revision, Instant at, String label, String json) {

    /** Expected revision that fits whatever is there. */
    public static final long ANY = -1;

    /** Whether this revision says that the document was removed. */
    public boolean removed() {
        return json.isEmpty();
    }
}
