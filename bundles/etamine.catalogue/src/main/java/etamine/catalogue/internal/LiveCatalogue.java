package etamine.catalogue.internal;

import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.supply.Catalogue;
import etamine.kitchen.supply.Delivery;
import etamine.kitchen.supply.Offer;
import etamine.kitchen.supply.Supplier;
import etamine.measures.Conversion;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Collection;
import java.util.Comparator;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Suppliers and offers as the shelves have them now. */
@Component(service = {Catalogue.class, LiveCatalogue.class})
public final class LiveCatalogue implements Catalogue {
    private final Shelves shelves;
    private final Kitchen kitchen;
    private volatile Sorted sorted = new Sorted(Map.of(), Map.of(), LocalDate.MIN, Map.of());

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Items items;

    /** Reads from the shelves of this module. */
    @Activate
    public LiveCatalogue(@Reference Shelves shelves, @Reference Kitchen kitchen) {
        this.shelves = shelves;
        this.kitchen = kitchen;
    }

    @Override
    public Map<String, Supplier> suppliers() {
        Currency currency = kitchen.house().currency();
        Map<String, Supplier> suppliers = new TreeMap<>();
        shelves.suppliers().forEach((id, form) -> suppliers.put(id, form.in(currency)));
        return suppliers;
    }

    /** One supplier, without looking at the others. */
    Optional<Supplier> supplier(String id) {
        Currency currency = kitchen.house().currency();
        return shelves.supplier(id).map(form -> form.in(currency));
    }

    @Override
    public List<Offer> offers(LocalDate on) {
        return holding(shelves.offers().values(), on);
    }

    @Override
    public List<Offer> offersFor(String item, LocalDate on) {
        Map<String, Item> all = items().map(Items::all).orElse(Map.of());
        Map<String, Offer> offers = shelves.offers();
        Sorted now = sorted;
        if (!now.standsOn(offers, all, on)) {
            now = new Sorted(offers, all, on, new ConcurrentHashMap<>());
            sorted = now;
        }
        return now.byItem().computeIfAbsent(item, id -> cheapestFirst(id, on));
    }

    private List<Offer> cheapestFirst(String item, LocalDate on) {
        return cheapestFirst(shelves.offersOf(item), item, on);
    }

    /** Those of the given offers of an item that hold on that day, cheapest per unit first. */
    List<Offer> cheapestFirst(List<Offer> offers, String item, LocalDate on) {
        Optional<Item> known = item(item);
        return holding(offers, on).stream()
                .map(offer -> new Priced(offer, new PackContent(offer, known).unitPrice()))
                .sorted(Priced.CHEAPEST_FIRST)
                .map(Priced::offer)
                .toList();
    }

    /** Offers in order, for as long as the shelf, the items and the day are the ones they were put in order with. */
    private record Sorted(
            Map<String, Offer> offers, Map<String, Item> items, LocalDate day, Map<String, List<Offer>> byItem) {
        boolean standsOn(Map<String, Offer> offersNow, Map<String, Item> itemsNow, LocalDate on) {
            return offers == offersNow && items == itemsNow && day.equals(on);
        }
    }

    private record Priced(Offer offer, Optional<Ratio> unitPrice) {
        static final Comparator<Priced> CHEAPEST_FIRST = Comparator.comparing(
                        Priced::unitPrice, Comparator.comparing((Optional<Ratio> price) -> price.isEmpty()))
                .thenComparing(priced -> priced.unitPrice().orElse(Ratio.ZERO))
                .thenComparing(priced -> OfferForm.id(priced.offer()));
    }

    /** One offer per article: the one whose price was the last to come into force. */
    private static List<Offer> holding(Collection<Offer> offers, LocalDate on) {
        Map<String, Offer> latest = new LinkedHashMap<>();
        offers.stream()
                .filter(offer -> holds(offer, on))
                .forEach(offer -> latest.merge(OfferForm.article(offer), offer, LiveCatalogue::later));
        return List.copyOf(latest.values());
    }

    private static Offer later(Offer one, Offer other) {
        LocalDate first = one.from().orElse(LocalDate.MIN);
        return other.from().orElse(LocalDate.MIN).isAfter(first) ? other : one;
    }

    private static boolean holds(Offer offer, LocalDate on) {
        return offer.from().map(from -> !from.isAfter(on)).orElse(true);
    }

    @Override
    public Optional<Quantity> content(Offer offer) {
        return of(offer).content() instanceof Conversion.Converted converted
                ? Optional.of(converted.quantity())
                : Optional.empty();
    }

    @Override
    public Optional<Money> packPrice(Offer offer, long packs) {
        Currency currency = kitchen.house().currency();
        return of(offer).packPrice(packs).map(amount -> Money.of(amount, currency));
    }

    @Override
    public List<Delivery> deliveries(String supplier, ZonedDateTime now, LocalDate until) {
        return supplier(supplier)
                .map(known -> new DeliveryDays(kitchen.house().zone()).open(known, now, until))
                .orElse(List.of());
    }

    PackContent of(Offer offer) {
        return new PackContent(offer, item(offer.item()));
    }

    Optional<Item> item(String id) {
        return items().flatMap(known -> known.find(id));
    }

    Optional<Items> items() {
        return Optional.ofNullable(items);
    }

    String name(String item) {
        return item(item).map(Item::name).orElse(item);
    }

    /** The price of one count unit of an offer's item, as people say it; empty when it cannot be reckoned. */
    Optional<UnitPrice> unitPrice(Offer offer) {
        return content(offer)
                .flatMap(content -> packPrice(offer, 1)
                        .map(price -> new UnitPrice(price.amount(), content).in(spoken(offer, content.unit()))));
    }

    private Unit spoken(Offer offer, Unit reckoned) {
        Unit counted = item(offer.item()).map(Item::countIn).orElse(reckoned);
        return switch (reckoned.dimension()) {
            case MASS -> counted.isLike(Unit.KG) && counted.system() != Unit.System.METRIC ? counted : Unit.KG;
            case VOLUME -> counted.isLike(Unit.L) && counted.system() != Unit.System.METRIC ? counted : Unit.L;
            default -> reckoned;
        };
    }
}
