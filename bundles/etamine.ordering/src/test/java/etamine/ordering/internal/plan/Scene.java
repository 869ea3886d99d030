package etamine.ordering.internal.plan;

import etamine.kitchen.supply.Delivery;
import etamine.kitchen.supply.Offer;
import etamine.kitchen.supply.Supplier;
import etamine.measures.Money;
import etamine.measures.Pack;
import etamine.measures.Unit;
import etamine.ordering.internal.plan.ItemModel.Wanted;
import etamine.ordering.internal.plan.OfferModel.Tier;
import etamine.ordering.internal.plan.SupplierModel.Slot;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Period;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** A small ordering problem, put together step by step. Grains are thousandths of a piece, written here in pieces. */
final class Scene {
    static final Currency EUR = Currency.getInstance("EUR");
    static final LocalDate TUESDAY = LocalDate.of(2026, 11, 24);
    static final long PIECE = 1000;

    private final int days;
    private final Map<String, SupplierModel> suppliers = new TreeMap<>();
    private final List<ItemModel> items = new ArrayList<>();

    Scene(int days) {
        this.days = days;
    }

    /** A supplier that delivers on these days of the plan. */
    Scene supplier(String id, String minimum, String fee, int... deliveries) {
        List<Slot> slots = new ArrayList<>();
        for (int day : deliveries) {
            LocalDate date = TUESDAY.plusDays(day);
            slots.add(new Slot(
                    id,
                    day,
                    new Delivery(
                            id, date, date.minusDays(1).atTime(LocalTime.NOON).atZone(ZoneOffset.UTC))));
        }
        Supplier supplier = new Supplier(
                id, "The " + id, "", Set.of(), Optional.empty(), Money.of(minimum, EUR), Money.of(fee, EUR));
        suppliers.put(id, new SupplierModel(supplier, slots));
        return this;
    }

    Scene add(Goods goods) {
        items.add(goods.model(days));
        return this;
    }

    PlanModel model() {
        return new PlanModel(TUESDAY, days, EUR, items, suppliers);
    }

    ItemModel item(int index) {
        return items.get(index);
    }

    /** An item of the scene. */
    static final class Goods {
        private final String id;
        private final List<Batch> batches = new ArrayList<>();
        private final List<OfferModel> offers = new ArrayList<>();
        private long[] use = new long[0];
        private long par = -1;
        private long orderAt = Long.MAX_VALUE;
        private long capacity = Long.MAX_VALUE;

        Goods(String id) {
            this.id = id;
        }

        Goods use(long... pieces) {
            use = Arrays.stream(pieces).map(piece -> piece * PIECE).toArray();
            return this;
        }

        Goods par(long pieces) {
            par = pieces * PIECE;
            return this;
        }

        Goods orderAt(long pieces) {
            orderAt = pieces * PIECE;
            return this;
        }

        Goods capacity(long pieces) {
            capacity = pieces * PIECE;
            return this;
        }

        Goods onHand(long pieces, int last) {
            batches.add(new Batch(Batch.ON_HAND, pieces * PIECE, last, "what is on the shelf", Optional.empty()));
            return this;
        }

        Goods onOrder(long pieces, int day) {
            batches.add(new Batch(day, pieces * PIECE, Batch.KEEPS, "an order", Optional.empty()));
            return this;
        }

        Goods offer(String supplier, long pieces, String price) {
            return offer(supplier, pieces, Optional.empty(), new Tier(1, Money.of(price, EUR)));
        }

        Goods fresh(String supplier, long pieces, String price, int life) {
            return offer(supplier, pieces, Optional.of(Period.ofDays(life)), new Tier(1, Money.of(price, EUR)));
        }

        Goods offer(String supplier, long pieces, Optional<Period> life, Tier... tiers) {
            Offer offer = new Offer(
                    supplier,
                    id,
                    supplier + "-" + id + "-" + pieces,
                    "",
                    Pack.parse(pieces + " ea"),
                    new BigDecimal(tiers[0].packPrice().toString()),
                    Optional.empty(),
                    List.of(),
                    life,
                    Optional.empty());
            offers.add(new OfferModel(offer, pieces * PIECE, List.of(tiers), life, OfferModel.Days.ALL));
            return this;
        }

        ItemModel model(int days) {
            int length = days + PlanModel.LOOK_AHEAD;
            long[] pars = new long[par < 0 ? 0 : length];
            Arrays.fill(pars, par);
            Wanted wanted = new Wanted(Arrays.copyOf(use, length), pars, orderAt, capacity);
            return new ItemModel(
                    id, new Grain(Unit.EA), wanted, batches, offers, offers.isEmpty() ? "Nobody offers it." : "");
        }
    }
}
