package etamine.kitchen.exchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.item.Replacement;
import etamine.measures.Pack;
import etamine.measures.Quantity;
import java.util.Optional;

/**
 * Puts one item in the place of another in the members of an entry, which is changed in place. A member that means the
 * same keeps the spelling it had; what cannot be said of the other item is an {@link IllegalArgumentException} with a
 * sentence.
 *
 * @param replacement which item for which
 */
public record ReplacedMembers(Replacement replacement) {

    /** Whether the entry's {@code item} is the one that goes. */
    public boolean names(ObjectNode entry) {
        return entry.path("item").asText().equals(replacement.from().id());
    }

    /** Makes the entry's {@code item} the one that stays. */
    public void item(ObjectNode entry) {
        entry.put("item", replacement.into().id());
    }

    /** A quantity of the item as it is. */
    public void quantity(ObjectNode entry, String member) {
        quantity(entry, member, Optional.empty());
    }

    /** A quantity of a preparation of the item. */
    public void quantity(ObjectNode entry, String member, Optional<String> as) {
        if (entry.path(member).isTextual()) {
            Quantity written = Quantity.parse(entry.path(member).textValue());
            Quantity meant = replacement.quantity(written, as);
            if (!meant.equals(written)) {
                entry.put(member, meant.toString());
            }
        }
    }

    /** A price with its {@code per}; a price without one is for a pack and stays. */
    public void price(ObjectNode entry, String member) {
        if (entry.path(member) instanceof ObjectNode price) {
            quantity(price, "per");
        }
    }

    /** What a pack holds. */
    public void pack(ObjectNode entry, String member) {
        if (entry.path(member).isTextual()) {
            Pack written = Pack.parse(entry.path(member).textValue());
            Pack meant = replacement.pack(written);
            if (!meant.equals(written)) {
                entry.put(member, meant.toString());
            }
        }
    }
}
