package etamine.diary.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.storage.Codec;
import java.util.function.Function;

/** Reads documents without forgetting the members it does not know. */
final class KeptCodec<T> implements Codec<Kept<T>> {
    private final Function<ObjectNode, T> reader;

    KeptCodec(Function<ObjectNode, T> reader) {
        this.reader = reader;
    }

    @Override
    public Kept<T> read(String id, String json) {
        try {
            ObjectNode node = Json.object(json);
            return new Kept<>(reader.apply(node), node);
        } catch (RuntimeException unreadable) {
            throw new IllegalArgumentException(id + ": " + unreadable.getMessage(), unreadable);
        }
    }

    @Override
    public String write(Kept<T> kept) {
        return kept.json().toString();
    }
}
