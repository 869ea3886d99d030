package etamine.ordering.internal;

import etamine.kitchen.house.Kitchen;
import etamine.kitchen.par.Par;
import etamine.kitchen.supply.Catalogue;
import etamine.kitchen.supply.Delivery;
import etamine.kitchen.use.ExpectedUse.DayUse;
import etamine.ordering.PlanTerms;
import etamine.ordering.internal.plan.ItemModel;
import etamine.ordering.internal.plan.PlanModel;
import etamine.ordering.internal.plan.SupplierModel;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** Gathers what the modules know into the model that the methods work on. */
final class ModelGathering {
    private final Kitchen kitchen;
    private final Neighbours neighbours;
    private final Map<String, Par> pars;
    private final ShelfOrders orders;
    private final PlanTerms terms;
    private final List<String> notes = new ArrayList<>();

    ModelGathering(Kitchen kitchen, Neighbours neighbours, Map<String, Par> pars, ShelfOrders orders, PlanTerms terms) {
        this.kitchen = kitchen;
        this.neighbours = neighbours;
        this.pars = pars;
        this.orders = orders;
        this.terms = terms;
    }

    /** What could not be taken into account, after {@link #model}. */
    List<String> notes() {
        return notes;
    }

    /** The model for this expected use. */
    PlanModel model(UseForecast forecast) {
        noteWhatIsMissing(forecast);
        Map<String, List<DayUse>> uses = new TreeMap<>();
        forecast.uses()
                .forEach(use -> uses.computeIfAbsent(use.item(), item -> new ArrayList<>())
                        .add(use));
        TreeSet<String> wanted = new TreeSet<>(pars.keySet());
        wanted.addAll(uses.keySet());
        List<ItemModel> items = new ArrayList<>();
        ItemGathering gathering = new ItemGathering(
                new ItemGathering.Gathering(neighbours, terms, kitchen.house().currency()), orders, notes);
        for (String item : wanted) {
            Optional<Par> par = Optional.ofNullable(pars.get(item));
            gathering.item(item, par, uses.getOrDefault(item, List.of())).ifPresent(items::add);
        }
        return new PlanModel(terms.from(), terms.days(), kitchen.house().currency(), items, suppliers());
    }

    private void noteWhatIsMissing(UseForecast forecast) {
        if (neighbours.stock().isEmpty()) {
            notes.add("There is no stock module, so nothing counts as on hand.");
        }
        if (neighbours.catalogue().isEmpty()) {
            notes.add("There is no catalogue module, so nobody can be ordered from.");
        }
        if (forecast.uses().isEmpty()) {
            notes.add("No use is expected on these days; only pars are filled.");
        }
        forecast.problems().forEach(problem -> notes.add(problem.text()));
        orders.uncounted()
                .forEach(line -> notes.add("What is on order of " + neighbours.itemName(line.item()) + " from "
                        + neighbours.supplierName(line.supplier())
                        + " does not count: no offer says what a pack holds."));
    }

    private Map<String, SupplierModel> suppliers() {
        Map<String, SupplierModel> models = new TreeMap<>();
        neighbours
                .catalogue()
                .ifPresent(catalogue -> catalogue
                        .suppliers()
                        .forEach((id, supplier) -> models.put(id, new SupplierModel(supplier, slots(catalogue, id)))));
        return models;
    }

    private List<SupplierModel.Slot> slots(Catalogue catalogue, String supplier) {
        LocalDate until = terms.from().plusDays((long) terms.days() + PlanModel.LOOK_AHEAD - 1);
        return catalogue.deliveries(supplier, now(), until).stream()
                .filter(delivery -> !delivery.day().isBefore(terms.from()))
                .map(this::slot)
                .toList();
    }

    private SupplierModel.Slot slot(Delivery delivery) {
        int day = Math.toIntExact(ChronoUnit.DAYS.between(terms.from(), delivery.day()));
        return new SupplierModel.Slot(delivery.supplier(), day, delivery);
    }

    /** The house's clock; for a plan of a past day, that day's morning. */
    private ZonedDateTime now() {
        ZonedDateTime now = ZonedDateTime.now(kitchen.clock());
        return terms.from().isBefore(now.toLocalDate())
                ? terms.from().atStartOfDay(kitchen.house().zone())
                : now;
    }
}
