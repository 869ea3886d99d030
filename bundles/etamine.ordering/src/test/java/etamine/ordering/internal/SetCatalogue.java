package etamine.ordering.internal;

import etamine.kitchen.supply.Catalogue;
import etamine.kitchen.supply.CutOff;
import etamine.kitchen.supply.Delivery;
import etamine.kitchen.supply.Offer;
import etamine.kitchen.supply.Supplier;
import etamine.measures.Money;
import etamine.measures.Pack;
import etamine.measures.Quantity;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Period;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** A catalogue whose suppliers and offers a test sets; packs are in the items' own dimension, prices per pack. */
final class SetCatalogue implements Catalogue {
    static final Currency EUR = Currency.getInstance("EUR");

    private final Map<String, Supplier> suppliers = new TreeMap<>();
    private final List<Offer> offers = new ArrayList<>();

    SetCatalogue supplier(String id, String minimum, String fee, DayOfWeek... days) {
        suppliers.put(
                id,
                new Supplier(
                        id,
                        "The " + id,
                        "orders@" + id + ".example",
                        Set.of(days),
                        Optional.of(new CutOff(1, LocalTime.of(22, 0))),
                        Money.of(minimum, EUR),
                        Money.of(fee, EUR)));
        return this;
    }

    SetCatalogue offer(String supplier, String item, String code, String pack, String price) {
        return offer(supplier, item, code, pack, price, Optional.empty());
    }

    /** An offer whose price holds from a day on; give an article's prices in the order of their days. */
    SetCatalogue offer(String supplier, String item, String code, String pack, String price, Optional<LocalDate> from) {
        offers.add(new Offer(
                supplier,
                item,
                code,
                "",
                Pack.parse(pack),
                new BigDecimal(price),
                Optional.empty(),
                List.of(),
                Optional.of(Period.ofDays(9)),
                from));
        return this;
    }

    /** An offer whose goods keep for so many days. */
    SetCatalogue fresh(String supplier, String item, String code, String pack, int life) {
        offers.add(new Offer(
                supplier,
                item,
                code,
                "",
                Pack.parse(pack),
                new BigDecimal("99.00"),
                Optional.empty(),
                List.of(),
                Optional.of(Period.ofDays(life)),
                Optional.empty()));
        return this;
    }

    @Override
    public Map<String, Supplier> suppliers() {
        return suppliers;
    }

    @Override
    public List<Offer> offers(LocalDate on) {
        return offers;
    }

    @Override
    public List<Offer> offersFor(String item, LocalDate on) {
        Map<String, Offer> latest = new TreeMap<>();
        offers.stream()
                .filter(offer -> offer.item().equals(item)
                        && offer.from().map(from -> !from.isAfter(on)).orElse(true))
                .forEach(offer -> latest.put(offer.supplier() + offer.code(), offer));
        return List.copyOf(latest.values());
    }

    @Override
    public Optional<Quantity> content(Offer offer) {
        return Optional.of(offer.pack().total());
    }

    @Override
    public Optional<Money> packPrice(Offer offer, long packs) {
        return Optional.of(new Money(offer.amountFor(packs), EUR));
    }

    @Override
    public List<Delivery> deliveries(String supplier, ZonedDateTime now, LocalDate until) {
        Supplier known = suppliers.get(supplier);
        List<Delivery> deliveries = new ArrayList<>();
        for (LocalDate day = now.toLocalDate(); !day.isAfter(until); day = day.plusDays(1)) {
            ZonedDateTime cutOff = known.cutOff().orElseThrow().before(day, now.getZone());
            if (known.deliveryDays().contains(day.getDayOfWeek()) && cutOff.isAfter(now)) {
                deliveries.add(new Delivery(supplier, day, cutOff));
            }
        }
        return deliveries;
    }
}
