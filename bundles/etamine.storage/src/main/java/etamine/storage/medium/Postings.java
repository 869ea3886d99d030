package etamine.storage.medium;

import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import etamine.storage.Commit.Posting;
import etamine.storage.LedgerEntry;
import etamine.storage.LedgerForm;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The ledger entries a transaction has appended so far. */
final class Postings {
    private static final Instant EARLIEST = Instant.parse("1700-01-01T00:00:00Z");
    private static final Instant LATEST = Instant.parse("2250-01-01T00:00:00Z");

    private final Medium medium;
    private final Map<String, LedgerForm> forms;
    private final Map<Place, LedgerEntry> appended = new LinkedHashMap<>();
    private final Map<Place, List<LedgerEntry>> reversals = new HashMap<>();

    private record Place(String ledger, String id) {}

    Postings(Medium medium, Map<String, LedgerForm> forms) {
        this.medium = medium;
        this.forms = forms;
    }

    List<Posting> all() {
        List<Posting> postings = new ArrayList<>(appended.size());
        appended.forEach((place, entry) -> postings.add(new Posting(place.ledger, entry)));
        return postings;
    }

    void append(String ledger, LedgerEntry entry) {
        LedgerForm form = form(ledger);
        requireNames(form, "keys", entry.keys().keySet(), form.keys());
        requireNames(form, "measures", entry.measures().keySet(), form.measures());
        if (entry.at().isBefore(EARLIEST) || entry.at().isAfter(LATEST)) {
            throw new IllegalArgumentException("An entry's time lies between 1700 and 2250: " + entry.at());
        }
        if (find(form, entry.id()).isPresent()) {
            throw new BookException(
                    Reason.EXISTS, "The entry " + entry.id() + " is already in the " + ledger + " ledger.");
        }
        appended.put(new Place(ledger, entry.id()), entry);
        entry.reverses()
                .ifPresent(id -> reversals
                        .computeIfAbsent(new Place(ledger, id), place -> new ArrayList<>())
                        .add(entry));
    }

    void reverse(String ledger, String id, String reason) {
        LedgerForm form = form(ledger);
        LedgerEntry entry = find(form, id)
                .orElseThrow(() -> new BookException(
                        Reason.OTHER, "There is no entry " + id + " in the " + ledger + " ledger to take back."));
        List<LedgerEntry> earlier = reversals(form, id);
        if (earlier.stream().anyMatch(reversal -> stands(form, reversal))) {
            throw new BookException(
                    Reason.EXISTS, "The entry " + id + " of the " + ledger + " ledger has already been taken back.");
        }
        append(ledger, opposite(entry, earlier.size() + 1, reason));
    }

    /** An entry stands until an entry that stands reverses it. */
    private boolean stands(LedgerForm form, LedgerEntry entry) {
        return reversals(form, entry.id()).stream().noneMatch(reversal -> stands(form, reversal));
    }

    private List<LedgerEntry> reversals(LedgerForm form, String id) {
        List<LedgerEntry> own = reversals.getOrDefault(new Place(form.name(), id), List.of());
        return Stream.concat(medium.reversals(form, id).stream(), own.stream()).toList();
    }

    private Optional<LedgerEntry> find(LedgerForm form, String id) {
        return Optional.ofNullable(appended.get(new Place(form.name(), id)))
                .or(() -> medium.ledger(form).entry(id));
    }

    private LedgerForm form(String ledger) {
        LedgerForm form = forms.get(ledger);
        if (form == null) {
            throw new IllegalArgumentException("No module has declared a ledger named " + ledger);
        }
        return form;
    }

    private static LedgerEntry opposite(LedgerEntry entry, int count, String reason) {
        Map<String, Long> negated = entry.measures().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, measure -> Math.negateExact(measure.getValue())));
        String detail = "{\"reason\":" + JsonText.quote(reason) + "}";
        return new LedgerEntry(
                entry.id() + "~" + count, entry.at(), entry.keys(), negated, detail, Optional.of(entry.id()));
    }

    private static void requireNames(LedgerForm form, String what, Set<String> given, List<String> wanted) {
        if (!given.equals(Set.copyOf(wanted))) {
            throw new IllegalArgumentException(
                    "An entry of the " + form.name() + " ledger has the " + what + " " + wanted + ", not " + given);
        }
    }
}
