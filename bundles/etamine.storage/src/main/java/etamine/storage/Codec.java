package etamine.storage;

import org.osgi.annotation.versioning.ConsumerType;

/**
 * Turns values into documents and back.
 *
 * @param <T> the value
 */
@ConsumerType
public interface Codec<T> {

    /**
     * Reads a document.
     *
     * @throws IllegalArgumentException if it cannot be understood; the message says where
     */
    T read(String id, String json);

    /** Writes a document. */
    String write(T value);
}
