package etamine.kitchen.item;

import etamine.storage.Transaction;
import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/** Knows where its module names an item, and can make it name another one. Thread-safe. */
@ConsumerType
public interface ItemMentions {

    /** Every place that names the item. */
    List<Mention> of(String item);

    /**
     * Rewrites everything of this module that names {@code from} so that it names {@code into}, with quantities that
     * mean the same.
     *
     * @return how many documents and entries it wrote
     * @throws IllegalArgumentException with a sentence that says what to do, when some of it cannot be rewritten; the
     *     caller gives the transaction up
     */
    int rewrite(Transaction transaction, Item from, Item into);

    /**
     * One place.
     *
     * @param kind the kind of thing, in the word the window navigates by, such as {@code recipe}
     * @param id its identifier
     * @param text what it is, for people
     */
    record Mention(String kind, String id, String text) {}
}
