package etamine.kitchen.exchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.storage.Codec;
import java.util.function.Function;

/**
 * A value read from a document together with the document, so that members this program does not know outlive every
 * change. The document is never changed in place.
 *
 * @param value what is understood of it
 * @param json the whole document
 * @param <T> the value
 */
public record Kept<T>(T value, ObjectNode json) {

    /**
     * A codec that reads with {@code reader} and writes the whole document.
     *
     * @param reader may throw any runtime exception for what it cannot understand
     * @param <T> the value
     */
    public static <T> Codec<Kept<T>> codec(Function<ObjectNode, T> reader) {
        return new Codec<>() {
            @Override
            public Kept<T> read(String id, String json) {
                try {
                    ObjectNode node = EntryJson.read(json);
                    return new Kept<>(reader.apply(node), node);
                } catch (RuntimeException unreadable) {
                    throw new IllegalArgumentException(id + ": " + unreadable.getMessage(), unreadable);
                }
            }

            @Override
            public String write(Kept<T> kept) {
                return kept.json().toString();
            }
        };
    }
}
