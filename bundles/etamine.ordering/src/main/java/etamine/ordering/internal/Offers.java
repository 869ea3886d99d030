package etamine.ordering.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.supply.Catalogue;
import etamine.kitchen.supply.Offer;
import etamine.measures.Conversion;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.ordering.PlanTerms;
import etamine.ordering.internal.plan.Grain;
import etamine.ordering.internal.plan.OfferModel;
import etamine.ordering.internal.plan.OfferModel.Days;
import etamine.ordering.internal.plan.OfferModel.Tier;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** The offers of an item that a plan can use, or why there are none. */
final class Offers {
    private final Neighbours neighbours;
    private final Optional<Item> item;
    private final Grain grain;
    private final PlanTerms terms;
    private final List<OfferModel> models = new ArrayList<>();
    private String obstacle = "";

    Offers(Neighbours neighbours, Optional<Item> item, Grain grain, PlanTerms terms) {
        this.neighbours = neighbours;
        this.item = item;
        this.grain = grain;
        this.terms = terms;
    }

    List<OfferModel> models() {
        return models;
    }

    String obstacle() {
        return models.isEmpty() ? obstacle : "";
    }

    void gather(String id) {
        if (neighbours.catalogue().isEmpty()) {
            obstacle = "There is no catalogue module, so nobody can be ordered from.";
            return;
        }
        Catalogue catalogue = neighbours.catalogue().get();
        Map<Integer, List<Offer>> changes = changes(catalogue, id);
        if (changes.values().stream().allMatch(List::isEmpty)) {
            obstacle = "Nobody offers it on " + terms.from() + ".";
        }
        List<Integer> days = List.copyOf(changes.keySet());
        for (int i = 0; i < days.size(); i++) {
            int before = i + 1 < days.size() ? days.get(i + 1) : Integer.MAX_VALUE;
            gather(catalogue, changes.get(days.get(i)), new Days(days.get(i), before));
        }
    }

    /**
     * The offers that hold from a day on, by the days of the plan on which any changes: what is delivered on a day is
     * paid at that day's price. An old price does not come back, so equal ends mean that nothing changes between.
     */
    private Map<Integer, List<Offer>> changes(Catalogue catalogue, String id) {
        List<Offer> offers = catalogue.offersFor(id, terms.from());
        Map<Integer, List<Offer>> changes = new TreeMap<>(Map.of(0, offers));
        if (catalogue.offersFor(id, terms.from().plusDays(terms.days() - 1L)).equals(offers)) {
            return changes;
        }
        for (int day = 1; day < terms.days(); day++) {
            List<Offer> then = catalogue.offersFor(id, terms.from().plusDays(day));
            if (!then.equals(offers)) {
                changes.put(day, then);
                offers = then;
            }
        }
        return changes;
    }

    private void gather(Catalogue catalogue, List<Offer> offers, Days days) {
        for (Offer offer : offers) {
            content(catalogue, offer)
                    .ifPresentOrElse(content -> add(catalogue, offer, content, days), () -> obstacle = missing(offer));
        }
    }

    private Optional<Quantity> content(Catalogue catalogue, Offer offer) {
        return catalogue
                .content(offer)
                .filter(content -> content.signum() > 0 && content.unit().isLike(grain.countIn()));
    }

    private String missing(Offer offer) {
        String pack = "The pack of “" + offer.pack() + "” from " + neighbours.supplierName(offer.supplier())
                + " cannot be counted in " + grain.countIn() + ". ";
        Conversion conversion = Counting.count(item, offer.pack().total());
        return conversion instanceof Conversion.Missing missing ? pack + missing.text() : pack;
    }

    private void add(Catalogue catalogue, Offer offer, Quantity content, Days days) {
        TreeSet<Integer> steps = new TreeSet<>(List.of(1));
        offer.breaks().forEach(step -> steps.add(Math.max(1, step.fromPacks())));
        List<Tier> tiers = new ArrayList<>();
        for (int packs : steps) {
            Optional<Money> price = catalogue.packPrice(offer, packs);
            price.ifPresent(money -> tiers.add(new Tier(packs, money)));
        }
        if (tiers.size() < steps.size()) {
            obstacle = "The price of " + offer.code() + " from " + neighbours.supplierName(offer.supplier())
                    + " is by weight, and what a pack weighs is not known. Add what one piece weighs.";
            return;
        }
        tiers.sort(Comparator.comparingInt(Tier::fromPacks));
        models.add(new OfferModel(
                offer, grain.of(content), tiers, offer.lifeOnArrival().or(() -> item.flatMap(Item::keeps)), days));
    }
}
