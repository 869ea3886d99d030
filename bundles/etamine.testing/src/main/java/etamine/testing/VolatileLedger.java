package etamine.testing;

import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import etamine.storage.Ledger;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import etamine.storage.Selection;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A ledger in memory.
 *
 * @param form its shape
 * @param medium where its entries are
 */
record VolatileLedger(LedgerForm form, VolatileMedium medium) implements Ledger {

    @Override
    public Optional<LedgerEntry> entry(String id) {
        return medium.entries(form.name(), entries -> Optional.ofNullable(entries.get(id)))
                .map(this::shaped);
    }

    @Override
    public List<LedgerEntry> entries(Selection selection) {
        return medium.entries(
                form.name(),
                entries -> selected(entries, selection)
                        .sorted(Comparator.comparing(LedgerEntry::at))
                        .toList());
    }

    @Override
    public List<Sum> sums(Selection selection, List<String> by) {
        requireKeys(by);
        return medium.entries(form.name(), entries -> {
            Map<String, Sum> groups = new TreeMap<>();
            selected(entries, selection).forEach(entry -> groups.merge(group(entry, by), single(entry, by), this::add));
            return groups.values().stream().filter(this::worthTelling).toList();
        });
    }

    private Stream<LedgerEntry> selected(Map<String, LedgerEntry> entries, Selection selection) {
        requireKeys(List.copyOf(selection.equal().keySet()));
        return entries.values().stream().map(this::shaped).filter(entry -> matches(entry, selection));
    }

    private static boolean matches(LedgerEntry entry, Selection selection) {
        return selection.equal().entrySet().stream()
                        .allMatch(
                                wanted -> wanted.getValue().equals(entry.keys().get(wanted.getKey())))
                && selection.from().filter(entry.at()::isBefore).isEmpty()
                && selection.until().map(entry.at()::isBefore).orElse(true);
    }

    /** The entry with what was not there yet when it was written. */
    private LedgerEntry shaped(LedgerEntry entry) {
        if (entry.keys().size() == form.keys().size()
                && entry.measures().size() == form.measures().size()) {
            return entry;
        }
        Map<String, String> keys = form.keys().stream()
                .collect(Collectors.toMap(key -> key, key -> entry.keys().getOrDefault(key, "")));
        Map<String, Long> measures = form.measures().stream()
                .collect(Collectors.toMap(name -> name, name -> entry.measures().getOrDefault(name, 0L)));
        return new LedgerEntry(entry.id(), entry.at(), keys, measures, entry.detail(), entry.reverses());
    }

    private static String group(LedgerEntry entry, List<String> by) {
        return by.stream().map(key -> entry.keys().get(key)).collect(Collectors.joining("\u0000"));
    }

    private static Sum single(LedgerEntry entry, List<String> by) {
        Map<String, String> keys = new LinkedHashMap<>();
        by.forEach(key -> keys.put(key, entry.keys().get(key)));
        return new Sum(keys, entry.measures(), 1);
    }

    private Sum add(Sum one, Sum other) {
        Map<String, Long> measures = new LinkedHashMap<>();
        form.measures()
                .forEach(name -> measures.put(
                        name, exactly(one.measures().get(name), other.measures().get(name))));
        return new Sum(one.keys(), measures, one.entries() + other.entries());
    }

    private long exactly(long one, long other) {
        try {
            return Math.addExact(one, other);
        } catch (ArithmeticException overflow) {
            throw new BookException(
                    Reason.OTHER, "The sums of the " + form.name() + " ledger are too large.", overflow);
        }
    }

    private boolean worthTelling(Sum sum) {
        return form.measures().isEmpty() || sum.measures().values().stream().anyMatch(value -> value != 0);
    }

    private void requireKeys(List<String> names) {
        List<String> unknown = new ArrayList<>(names);
        unknown.removeAll(form.keys());
        if (!unknown.isEmpty()) {
            throw new IllegalArgumentException("The " + form.name() + " ledger has no key " + unknown);
        }
    }
}
