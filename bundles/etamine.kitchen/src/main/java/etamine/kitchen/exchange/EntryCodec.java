package etamine.kitchen.exchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Exemption;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.storage.Codec;
import java.util.List;
import java.util.function.Function;

/**
 * Documents that are entries of the exchange form: read, written, and rewritten without losing a member. Thread-safe.
 *
 * @param <T> the value
 */
@Exemption(
        rule = "exported-types",
        because = "sections of all modules keep their documents alike, and modules may not share code otherwise")
public final class EntryCodec<T> implements Codec<T> {
    private final Function<EntryReader, T> reading;
    private final Function<T, ObjectNode> form;

    /**
     * A codec of one kind of entry.
     *
     * @param reading reads an entry, noting what is wrong with it on the reader
     * @param form a value as an entry, with the members that it says something about
     */
    public EntryCodec(Function<EntryReader, T> reading, Function<T, ObjectNode> form) {
        this.reading = reading;
        this.form = form;
    }

    @Override
    public T read(String id, String json) {
        EntryReader entry = new EntryReader(EntryJson.read(json));
        T value = reading.apply(entry);
        List<Trouble> troubles = entry.troubles();
        if (!troubles.isEmpty()) {
            throw new IllegalArgumentException(
                    troubles.get(0).pointer() + ": " + troubles.get(0).problem());
        }
        return value;
    }

    @Override
    public String write(T value) {
        return form.apply(value).toString();
    }

    /** The stored document with the value's present facts, keeping every member this program does not know. */
    public String rewrite(String stored, T value) {
        ObjectNode kept = EntryJson.read(stored);
        T before = reading.apply(new EntryReader(kept));
        return EntryMerge.apply(kept, form.apply(before), form.apply(value)).toString();
    }
}
