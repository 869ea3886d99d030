package etamine.inventory.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Explanation;
import etamine.inventory.CountLine;
import etamine.inventory.Incoming;
import etamine.inventory.Movement;
import etamine.inventory.Outgoing;
import etamine.inventory.RefusedException;
import etamine.inventory.RefusedException.Reason;
import etamine.inventory.StockLine;
import etamine.inventory.Stockroom;
import etamine.kitchen.exchange.EntryMerge;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.order.Orders;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.stock.MovementKind;
import etamine.kitchen.stock.Place;
import etamine.kitchen.supply.Catalogue;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.storage.LedgerEntry;
import etamine.storage.Transaction;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Moves stock by appending to the journal, one transaction a call. */
@Component
public final class JournalStockroom implements Stockroom {
    private final StockJournal journal;
    private final ShelfReport report;
    private final Movers movers;
    private final KnownItems items;
    private final PlaceShelf places;
    private final Kitchen kitchen;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Recipes recipes;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Orders orders;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Catalogue catalogue;

    /** Works on that journal by the house's clock. */
    @Activate
    public JournalStockroom(
            @Reference StockJournal journal,
            @Reference ShelfReport report,
            @Reference Movers movers,
            @Reference KnownItems items,
            @Reference PlaceShelf places,
            @Reference Kitchen kitchen) {
        this.journal = journal;
        this.report = report;
        this.movers = movers;
        this.items = items;
        this.places = places;
        this.kitchen = kitchen;
    }

    @Override
    public List<StockLine> lines(LocalDate day) {
        return report.now(day);
    }

    @Override
    public List<StockLine> lines(LocalDate day, Instant at) {
        return report.at(day, at);
    }

    @Override
    public List<StockLine> linesIn(LocalDate day, String place) {
        return report.in(day, place);
    }

    @Override
    public Explanation explain(String item) {
        return report.explain(item);
    }

    @Override
    public List<Movement> movements(String item, int atMost) {
        List<LedgerEntry> entries = journal.entries(item);
        Set<String> standing =
                Standing.of(entries).stream().map(LedgerEntry::id).collect(Collectors.toSet());
        List<Movement> movements = new ArrayList<>();
        for (int i = entries.size() - 1; i >= 0 && movements.size() < atMost; i--) {
            LedgerEntry entry = entries.get(i);
            movements.add(movement(
                    entry, !standing.contains(entry.id()) && entry.reverses().isEmpty()));
        }
        return movements;
    }

    private Movement movement(LedgerEntry entry, boolean reversed) {
        return MovementForm.movement(entry, items.measure(entry.keys().get("item")), reversed);
    }

    @Override
    public List<Movement> open(List<Incoming> lines) {
        return come("Enter opening stock", MovementKind.OPENING, lines, Json.empty());
    }

    @Override
    public List<Movement> receive(String supplier, List<Incoming> lines) {
        ObjectNode why = Json.with(Json.empty(), "supplier", supplier);
        return come(
                "Receive goods" + (supplier.isEmpty() ? "" : " from " + supplier), MovementKind.RECEIVED, lines, why);
    }

    @Override
    public List<Movement> bring(String from, List<Incoming> lines) {
        ObjectNode why = Json.with(Json.empty(), "reason", from.isEmpty() ? "" : "from " + from);
        return come("Take in " + (from.isEmpty() ? "a transfer" : "from " + from), MovementKind.BROUGHT, lines, why);
    }

    private List<Movement> come(String label, MovementKind kind, List<Incoming> lines, ObjectNode why) {
        String since = LotKey.text(now());
        List<Draft> drafts = new ArrayList<>();
        for (Incoming line : lines) {
            ItemMeasure.Amount amount = movers.amount(line.item(), line.quantity());
            LotKey lot = new LotKey(
                    movers.place(line.item(), line.place()),
                    line.lot(),
                    line.useBy().map(LocalDate::toString).orElse(""),
                    line.unitCost().map(Object::toString).orElse(""),
                    since,
                    amount.dimension());
            drafts.add(new Draft(kind, line.item(), lot, amount.base(), why));
        }
        return write(label, () -> drafts, nothing -> {});
    }

    @Override
    public List<Movement> receiveOrder(String order, Map<String, Long> shortPacks, Optional<String> place) {
        Optional<Orders> known = Optional.ofNullable(orders);
        return write(
                "Receive order " + order,
                () -> new Receiving(Receiving.find(known, order), movers, items, Optional.ofNullable(catalogue))
                        .drafts(shortPacks, place, now(), kitchen.today()),
                tx -> known.orElseThrow().received(tx, order));
    }

    @Override
    public List<Movement> take(MovementKind kind, Outgoing what) {
        Movers.refuseIf(
                Draft.direction(kind) >= 0,
                Reason.INPUT,
                "Take things out as used, sold, wasted, returned, staff, given, resold or sent.");
        Movers.refuseIf(what.quantity().signum() <= 0, Reason.INPUT, "Write a quantity of more than zero.");
        ItemMeasure.Amount amount = movers.amount(what.item(), what.quantity());
        Optional<String> place = what.place().map(named -> movers.place(what.item(), named));
        ObjectNode why = Json.with(Json.empty(), "reason", what.reason());
        String label = "Write " + what.quantity() + " of " + items.name(what.item()) + " " + Draft.text(kind);
        return write(label, () -> movers.take(kind, what.item(), amount, place, why), nothing -> {});
    }

    @Override
    public Optional<Quantity> owing(String item) {
        return report.owing(item);
    }

    @Override
    public List<Movement> move(String item, Quantity quantity, String from, String to) {
        ItemMeasure.Amount amount = movers.amount(item, quantity);
        String source = movers.place(item, from);
        String target = movers.place(item, to);
        Movers.refuseIf(source.equals(target), Reason.INPUT, "Name two different places.");
        return write(
                "Move " + quantity + " of " + items.name(item),
                () -> moved(item, amount, source, target),
                nothing -> {});
    }

    private List<Draft> moved(String item, ItemMeasure.Amount amount, String source, String target) {
        List<Draft> drafts = new ArrayList<>();
        for (Draft out : movers.take(MovementKind.MOVED, item, amount, Optional.of(source), Json.empty())) {
            drafts.add(out);
            drafts.add(new Draft(out.kind(), item, out.lot().in(target), -out.amount(), out.detail()));
        }
        return drafts;
    }

    @Override
    public List<Movement> make(String recipe, Ratio batches) {
        Optional<Recipes> known = Optional.ofNullable(recipes);
        Movers.refuseIf(known.isEmpty(), Reason.RECIPE, "No installed module keeps recipes, so nothing can be made.");
        Optional<Recipe> found = known.flatMap(all -> all.find(recipe));
        Movers.refuseIf(found.isEmpty(), Reason.RECIPE, "There is no recipe “" + recipe + "”; look for its id.");
        Movers.refuseIf(batches.signum() <= 0, Reason.INPUT, "Write how many batches, more than zero.");
        Batch batch = new Batch(found.orElseThrow(), batches, movers, items, journal);
        return write(
                "Make " + batches + " x " + found.orElseThrow().name(),
                () -> batch.drafts(now(), kitchen.today()),
                nothing -> {});
    }

    @Override
    public List<Movement> count(List<CountLine> lines) {
        return write(
                "Count " + lines.size() + (lines.size() == 1 ? " line" : " lines"),
                () -> new Counting(movers, now()).drafts(lines),
                nothing -> {});
    }

    @Override
    public List<Movement> reverse(String movement, String reason) {
        LedgerEntry entry = journal.ledger()
                .entry(movement)
                .orElseThrow(() -> new RefusedException(Reason.MOVEMENT, "There is no movement “" + movement + "”."));
        String item = entry.keys().get("item");
        List<LedgerEntry> standing = Standing.of(journal.entries(item));
        Movers.refuseIf(
                standing.stream().noneMatch(known -> known.id().equals(movement)),
                Reason.MOVEMENT,
                "The movement “" + movement + "” has been taken back already.");
        Movers.refuseIf(
                Json.parse(entry.detail()).has(StockMentions.MERGED_WITH),
                Reason.MOVEMENT,
                "This movement belongs to two ingredients that became one; undo the merge, or count what is there.");
        List<String> back = new ArrayList<>(List.of(movement));
        otherHalf(entry, standing).ifPresent(half -> back.add(half.id()));
        journal.book().write("Take back a movement of " + items.name(item), transaction -> {
            back.forEach(id -> transaction.reverse(StockJournal.LEDGER, id, reason));
            return movement;
        });
        return journal.entries(item).stream()
                .filter(known -> known.reverses().filter(back::contains).isPresent())
                .map(known -> movement(known, false))
                .toList();
    }

    /** Where a move took its goods to or from: taken back alone, a half would make stock or lose it. */
    private static Optional<LedgerEntry> otherHalf(LedgerEntry entry, List<LedgerEntry> standing) {
        LotKey lot = LotKey.of(entry.keys());
        long amount = entry.measures().get(StockJournal.AMOUNT);
        return standing.stream()
                .filter(other -> isMove(entry) && isMove(other) && other.at().equals(entry.at()))
                .filter(other -> other.measures().get(StockJournal.AMOUNT) == -amount)
                .filter(other -> LotKey.of(other.keys()).in(lot.place()).equals(lot))
                .findFirst();
    }

    private static boolean isMove(LedgerEntry entry) {
        return Draft.kind(entry.keys().get("kind")) == MovementKind.MOVED;
    }

    @Override
    public void savePlace(Place place) {
        Movers.refuseIf(
                !place.id().matches("[\\p{L}\\p{N}][\\p{L}\\p{N}._-]{0,79}"),
                Reason.INPUT,
                "A place needs a short identifier of letters, digits and hyphens, such as walk-in.");
        Movers.refuseIf(place.name().isBlank(), Reason.INPUT, "Give the place a name.");
        long expected = places.revision(place.id());
        journal.book().write("Save place " + place.name(), transaction -> {
            ObjectNode after = PlaceShelf.write(place);
            ObjectNode json = transaction
                    .get(PlaceShelf.SHELF, place.id())
                    .filter(document -> !document.removed())
                    .map(document -> Json.parse(document.json()))
                    .map(stored ->
                            EntryMerge.apply(stored, PlaceShelf.write(PlaceShelf.read(new EntryReader(stored))), after))
                    .orElse(after);
            return transaction.save(PlaceShelf.SHELF, place.id(), expected, json.toString());
        });
    }

    @Override
    public void removePlace(String id) {
        boolean used = journal.amounts().values().stream()
                .flatMap(lots -> lots.keySet().stream())
                .anyMatch(lot -> lot.place().equals(id));
        Movers.refuseIf(used, Reason.UNKNOWN_PLACE, "Something is still in “" + places.name(id) + "”; move it first.");
        long expected = places.revision(id);
        journal.book().write("Remove place " + places.name(id), transaction -> {
            transaction.remove(PlaceShelf.SHELF, id, expected);
            return id;
        });
    }

    private Instant now() {
        return kitchen.clock().instant().truncatedTo(ChronoUnit.MILLIS);
    }

    /** Looks at what lies there within the transaction, so that nobody moves it in between. */
    private List<Movement> write(String label, Supplier<List<Draft>> drafts, Consumer<Transaction> also) {
        Instant at = now();
        List<LedgerEntry> entries = journal.book().write(label, transaction -> {
            List<LedgerEntry> written = drafts.get().stream()
                    .filter(draft -> draft.amount() != 0)
                    .map(draft -> draft.at(at))
                    .toList();
            written.forEach(entry -> transaction.append(StockJournal.LEDGER, entry));
            also.accept(transaction);
            return written;
        });
        return entries.stream().map(entry -> movement(entry, false)).toList();
    }
}
