package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Use;
import etamine.recipes.UseLines;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * The lines of one recipe while somebody writes them: those that were understood and, in their places between them, those
 * that were not yet. It runs ahead of the book, which follows; {@link #uses} may be read on any thread, the rest is for one.
 */
final class LineSheet {
    private final UseLines reader;
    private final AtomicInteger underWay = new AtomicInteger();
    private List<Entry> entries = new ArrayList<>();
    private volatile List<Use> uses = List.of();

    /** A line. */
    sealed interface Entry {
        /**
         * Understood.
         *
         * @param use what it says
         */
        record Clear(Use use) implements Entry {}

        /**
         * Not understood yet.
         *
         * @param text as typed
         * @param reading why
         */
        record Unclear(String text, UseLines.Reading.Unclear reading) implements Entry {}
    }

    LineSheet(UseLines reader) {
        this.reader = reader;
    }

    List<Entry> entries() {
        return List.copyOf(entries);
    }

    /** What was understood, in order. */
    List<Use> uses() {
        return uses;
    }

    long unclear() {
        return entries.stream().filter(Entry.Unclear.class::isInstance).count();
    }

    /** The first row from a place on that was not understood; past the end where all were. */
    int unclearFrom(int from) {
        int row = from;
        while (row < entries.size() && !(entries.get(row) instanceof Entry.Unclear)) {
            row++;
        }
        return row;
    }

    /** The place of a line among those understood; empty where it is not. */
    Optional<Integer> use(int row) {
        if (row >= entries.size() || !(entries.get(row) instanceof Entry.Clear)) {
            return Optional.empty();
        }
        return Optional.of((int) entries.subList(0, row).stream()
                .filter(Entry.Clear.class::isInstance)
                .count());
    }

    /** The row of one that was understood, by its place among them; past the end where there is none. */
    int row(int use) {
        int seen = -1;
        for (int row = 0; row < entries.size(); row++) {
            seen += entries.get(row) instanceof Entry.Clear ? 1 : 0;
            if (seen == use) {
                return row;
            }
        }
        return entries.size();
    }

    /** A change to the book has begun; until it has ended the sheet knows better than the book. */
    void begin() {
        underWay.incrementAndGet();
    }

    /** A change to the book has ended, well or not. */
    void end() {
        underWay.decrementAndGet();
    }

    /** Takes over what the book has, keeping in their places the lines that were not understood. */
    void follow(List<Use> inBook) {
        if (underWay.get() > 0 || inBook.equals(uses)) {
            return;
        }
        List<Entry> fresh = new ArrayList<>();
        inBook.forEach(use -> fresh.add(new Entry.Clear(use)));
        for (int row = 0; row < entries.size(); row++) {
            if (entries.get(row) instanceof Entry.Unclear unclear
                    && !unclear.text().isEmpty()) {
                fresh.add(Math.min(row, fresh.size()), unclear);
            }
        }
        put(fresh);
    }

    /** Turns lines that the book refused into lines to look at, each under the sentence. */
    void refused(List<Use> inBook, String sentence) {
        List<Use> kept = new ArrayList<>(inBook);
        List<Entry> marked = new ArrayList<>();
        for (Entry entry : entries) {
            boolean lost = entry instanceof Entry.Clear clear && !kept.remove(clear.use());
            marked.add(
                    lost
                            ? new Entry.Unclear(
                                    reader.write(((Entry.Clear) entry).use()), new UseLines.Reading.Unclear(sentence))
                            : entry);
        }
        put(marked);
    }

    /** Takes a line as typed, or out when nothing is; answers whether it was understood. */
    boolean type(int row, String text) {
        if (text.isBlank()) {
            if (row < entries.size()) {
                entries.remove(row);
                put(entries);
            }
            return true;
        }
        Entry entry = entry(text, reader.read(text));
        put(Rows.with(entries, row, entry));
        return entry instanceof Entry.Clear;
    }

    /** Puts what was read from a pasted list before a row; headings are left out. */
    void insert(int row, List<UseLines.Pasted> pasted) {
        List<Entry> coming = new ArrayList<>();
        pasted.forEach(line -> line.reading().ifPresent(reading -> coming.add(entry(line.text(), reading))));
        List<Entry> all = new ArrayList<>(entries);
        all.addAll(Math.min(row, all.size()), coming);
        put(all);
    }

    private static Entry entry(String text, UseLines.Reading reading) {
        return reading instanceof UseLines.Reading.Clear clear
                ? new Entry.Clear(clear.use())
                : new Entry.Unclear(text, (UseLines.Reading.Unclear) reading);
    }

    /** Reads a line anew in other words, and with it all that were not understood. */
    void reread(int row, String text) {
        List<Entry> read = new ArrayList<>();
        for (int at = 0; at < entries.size(); at++) {
            boolean unclear = entries.get(at) instanceof Entry.Unclear;
            String words = at == row ? text : unclear ? ((Entry.Unclear) entries.get(at)).text() : "";
            read.add(unclear && !words.isEmpty() ? entry(words, reader.read(words)) : entries.get(at));
        }
        put(read);
    }

    /** Puts a use in place of a line, as the kitchen meant it. */
    void put(int row, Use use) {
        put(Rows.with(entries, row, new Entry.Clear(use)));
    }

    void open(int row) {
        List<Entry> all = new ArrayList<>(entries);
        all.add(Math.min(row, all.size()), new Entry.Unclear("", new UseLines.Reading.Unclear("")));
        put(all);
    }

    boolean move(int row, int by) {
        List<Entry> moved = Rows.moved(entries, row, by);
        boolean went = !moved.equals(entries);
        put(moved);
        return went;
    }

    /** Switches a line between as purchased and edible portion; the quantity stays as written. */
    boolean switchBasis(int row) {
        if (row < entries.size() && entries.get(row) instanceof Entry.Clear clear) {
            Basis other = clear.use().basis() == Basis.AP ? Basis.EP : Basis.AP;
            put(row, clear.use().withBasis(other));
            return true;
        }
        return false;
    }

    private void put(List<Entry> changed) {
        entries = new ArrayList<>(changed);
        uses = entries.stream()
                .filter(Entry.Clear.class::isInstance)
                .map(entry -> ((Entry.Clear) entry).use())
                .toList();
    }
}
