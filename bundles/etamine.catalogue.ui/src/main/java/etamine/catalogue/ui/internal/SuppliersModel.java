package etamine.catalogue.ui.internal;

import etamine.base.Explanation;
import etamine.base.Problem;
import etamine.catalogue.RefusedException;
import etamine.catalogue.SupplierBook;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.supply.Delivery;
import etamine.kitchen.supply.Offer;
import etamine.kitchen.supply.Supplier;
import etamine.measures.Money;
import etamine.measures.UnitPrice;
import etamine.widgets.Choice;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What the suppliers bench shows and does, without widgets. Safe on any thread. */
final class SuppliersModel {
    private static final DateTimeFormatter CUT_OFF = DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.ENGLISH);

    private final SupplierBook book;
    private final Kitchen kitchen;
    private final java.util.function.Supplier<Optional<Items>> items;

    SuppliersModel(SupplierBook book, Kitchen kitchen, java.util.function.Supplier<Optional<Items>> items) {
        this.book = book;
        this.kitchen = kitchen;
        this.items = items;
    }

    List<SupplierRow> rows() {
        return book.suppliers().values().stream()
                .map(this::row)
                .sorted(Comparator.comparing(SupplierRow::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    private SupplierRow row(Supplier supplier) {
        Optional<Delivery> next = book.next(supplier.id());
        return new SupplierRow(
                supplier.id(),
                supplier.name(),
                SupplierText.days(supplier.deliveryDays()),
                next.map(Delivery::day),
                next.map(Delivery::orderBy),
                next.map(delivery -> CUT_OFF.format(delivery.orderBy())).orElse(""),
                supplier.minimum().toString(),
                supplier.fee().toString(),
                offersOf(supplier.id()).size());
    }

    Optional<Supplier> supplier(String id) {
        return Optional.ofNullable(book.suppliers().get(id));
    }

    Optional<Offer> offer(String id) {
        return Optional.ofNullable(book.offers().get(id));
    }

    private Map<String, Offer> offersOf(String supplier) {
        return book.offers().entrySet().stream()
                .filter(entry -> entry.getValue().supplier().equals(supplier))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    List<OfferRow> offers(String supplier) {
        Set<String> current = book.current();
        return offersOf(supplier).entrySet().stream()
                .map(entry -> row(entry.getKey(), entry.getValue(), current.contains(entry.getKey())))
                .sorted(Comparator.comparing(OfferRow::item, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(OfferRow::code)
                        .thenComparing(OfferRow::from))
                .toList();
    }

    private OfferRow row(String id, Offer offer, boolean current) {
        Optional<UnitPrice> each = book.unitPrice(offer);
        return new OfferRow(
                id,
                name(offer.item()),
                offer.code(),
                offer.pack().toString(),
                OfferDraft.price(offer),
                each.map(SuppliersModel::words).orElse("not known"),
                each.map(UnitPrice::amount).orElse(BigDecimal.ZERO),
                from(offer, current),
                current,
                !book.problems(offer).isEmpty());
    }

    private String from(Offer offer, boolean current) {
        String day = offer.from().map(LocalDate::toString).orElse("");
        if (current) {
            return day;
        }
        boolean coming = offer.from().filter(kitchen.today()::isBefore).isPresent();
        return coming ? day + ", to come" : day + ", former";
    }

    private static String words(UnitPrice price) {
        return price.amount().toPlainString() + " / " + price.per().unit();
    }

    String name(String item) {
        return items.get().map(known -> known.name(item)).orElse(item);
    }

    /** What can be offered: everything that is bought. */
    List<Choice> itemChoices() {
        return items.get().map(Items::all).orElse(Map.of()).values().stream()
                .filter(item -> !item.made())
                .sorted(Comparator.comparing(Item::name, String.CASE_INSENSITIVE_ORDER))
                .map(item -> new Choice(item.id(), item.name()))
                .toList();
    }

    /** How an offer's price comes about, and what is doubtful about it. */
    Optional<Explanation> explain(String offer) {
        return offer(offer).map(book::explain);
    }

    /** What is wrong with a fact as it is typed; empty when it can be saved. */
    Optional<String> problem(String supplier, SupplierField field, String typed) {
        return supplier(supplier).flatMap(known -> trouble(() -> SupplierText.with(known, field, typed)));
    }

    /** Saves one fact of a supplier as it is now. */
    void save(String supplier, SupplierField field, String typed) {
        long expected = book.supplierRevision(supplier);
        supplier(supplier).ifPresent(known -> book.save(SupplierText.with(known, field, typed), expected));
    }

    /** What is wrong with an offer as it is typed; empty when it can be saved. */
    Optional<String> problem(String supplier, OfferDraft draft, String formerId) {
        return trouble(() -> {
            String id = book.idOf(draft.read(supplier));
            if (!id.equals(formerId) && book.offers().containsKey(id)) {
                throw new IllegalArgumentException(
                        "There is already an offer " + id + "; change that one or give this another article number.");
            }
        });
    }

    private static Optional<String> trouble(Runnable reading) {
        try {
            reading.run();
            return Optional.empty();
        } catch (IllegalArgumentException | RefusedException unreadable) {
            return Optional.of(String.valueOf(unreadable.getMessage()));
        }
    }

    /** The revision an offer is at, to be asked before it is read; 0 for none of that id. */
    long revision(String offer) {
        return book.offerRevision(offer);
    }

    /** Saves a new offer; answers its id and what is doubtful about it. */
    Saved save(String supplier, OfferDraft draft) {
        return save(supplier, draft, "", 0);
    }

    /** Saves an offer that was read at that revision; answers its id and what is doubtful about it. */
    Saved save(String supplier, OfferDraft draft, String formerId, long expected) {
        Offer offer = draft.read(supplier);
        book.save(offer, formerId, expected);
        return new Saved(
                book.idOf(offer),
                book.problems(offer).stream().map(Problem::text).toList());
    }

    /**
     * What came of saving an offer.
     *
     * @param id what it is kept under
     * @param doubts what should be looked at
     */
    record Saved(String id, List<String> doubts) {}

    /** Adds a supplier of that name; answers its id. */
    String add(String name) {
        Money nothing = Money.zero(kitchen.house().currency());
        String id = freshId(name);
        book.save(new Supplier(id, name, "", Set.of(), Optional.empty(), nothing, nothing), 0);
        return id;
    }

    String freshId(String name) {
        String plain = Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        String base = plain.isEmpty() ? "supplier" : plain;
        String id = base;
        for (int number = 2; book.suppliers().containsKey(id); number++) {
            id = base + "-" + number;
        }
        return id;
    }

    void removeSupplier(String id) {
        book.removeSupplier(id);
    }

    void removeOffer(String id) {
        book.removeOffer(id);
    }

    LocalDate today() {
        return kitchen.today();
    }
}
