package etamine.costing.internal.menu;

import etamine.costing.Days;
import etamine.costing.MenuAnalysis;
import etamine.costing.MenuReport;
import etamine.costing.MenuReport.LeftOut;
import etamine.costing.internal.words.LikelyIds;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.covers.Diary;
import etamine.kitchen.covers.Sale;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** The menu from the diary's sales and today's costs and prices. */
@Component
public final class EngineeredMenu implements MenuAnalysis {
    private static final Days EVER = new Days(LocalDate.of(1900, 1, 1), LocalDate.of(9999, 12, 30));

    private final Costs costs;
    private final Kitchen kitchen;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    public volatile @Nullable Recipes recipes;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    public volatile @Nullable Diary diary;

    /** Analyses by those costs. */
    @Activate
    public EngineeredMenu(@Reference Costs costs, @Reference Kitchen kitchen) {
        this.costs = costs;
        this.kitchen = kitchen;
    }

    /** A recipe with what was sold of it. */
    record Offered(Recipe recipe, RecipeCost cost, long sold) {}

    @Override
    public Optional<Days> sold() {
        return days(sales(EVER));
    }

    private List<Sale> sales(Days days) {
        return Optional.ofNullable(diary)
                .map(kept -> kept.sales(days.from(), days.to()))
                .orElse(List.of());
    }

    private static Optional<Days> days(List<Sale> sales) {
        Optional<LocalDate> first = sales.stream().map(Sale::date).min(LocalDate::compareTo);
        Optional<LocalDate> last = sales.stream().map(Sale::date).max(LocalDate::compareTo);
        return first.map(from -> new Days(from, last.orElse(from)));
    }

    @Override
    public MenuReport report(Optional<Days> wanted, Comparison how, Set<String> only) {
        Map<String, Recipe> all = Optional.ofNullable(recipes).map(Recipes::all).orElse(Map.of());
        refuseUnknown(only, all);
        List<Sale> sales = sales(wanted.orElse(EVER));
        Map<String, Long> sold = new TreeMap<>();
        sales.forEach(sale -> sold.merge(sale.recipe(), sale.sold(), Math::addExact));
        if (!only.isEmpty()) {
            sold.keySet().retainAll(only);
        }
        List<LeftOut> leftOut = new ArrayList<>();
        List<Offered> offered = offered(all, sold, only, leftOut);
        List<String> notes = new ArrayList<>(missing(sales));
        List<MenuReport.Group> groups = groups(offered, how, notes);
        notes.add(MenuReport.CAUTION);
        return new MenuReport(wanted.or(() -> days(sales)), groups, leftOut, notes);
    }

    private static void refuseUnknown(Set<String> only, Map<String, Recipe> all) {
        for (String id : only) {
            if (!all.containsKey(id)) {
                throw new IllegalArgumentException(
                        "There is no recipe “" + id + "”." + LikelyIds.hint(id, all.keySet()));
            }
        }
    }

    private List<String> missing(List<Sale> sales) {
        if (diary == null) {
            return List.of("No installed module keeps sales, so nothing is known to have been sold.");
        }
        if (recipes == null) {
            return List.of("No installed module keeps recipes, so nothing is known to be on the menu.");
        }
        return sales.isEmpty()
                ? List.of("Nothing was sold on these days; note sales or choose other days.")
                : List.of();
    }

    /** What is on the menu or was sold; what was sold but has no price goes to those left out. */
    private List<Offered> offered(
            Map<String, Recipe> all, Map<String, Long> sold, Set<String> only, List<LeftOut> leftOut) {
        List<Offered> offered = new ArrayList<>();
        for (Recipe recipe : all.values()) {
            long portions = sold.getOrDefault(recipe.id(), 0L);
            boolean asked = only.isEmpty() || only.contains(recipe.id());
            boolean offers = portions > 0 || portions == 0 && !recipe.standing().archived();
            Optional<RecipeCost> cost = Optional.of(recipe)
                    .filter(known -> asked && offers && known.menu().isPresent())
                    .flatMap(known -> costs.recipe(known.id()))
                    .filter(known -> known.plate().isPresent());
            cost.ifPresent(known -> {
                offered.add(new Offered(recipe, known, portions));
                sold.remove(recipe.id());
            });
        }
        sold.forEach((id, portions) -> leftOut.add(new LeftOut(id, portions, why(all.get(id), portions))));
        return offered;
    }

    private static String why(@Nullable Recipe recipe, long portions) {
        if (recipe == null) {
            return "There is no such recipe any more.";
        }
        if (portions < 0) {
            return "Fewer than none were sold; correct its sales.";
        }
        return recipe.menu().isEmpty()
                ? "It has no menu price; write one."
                : "One portion has no cost; say how big a portion is.";
    }

    private List<MenuReport.Group> groups(List<Offered> offered, Comparison how, List<String> notes) {
        Map<Kind, List<Offered>> byKind = new EnumMap<>(Kind.class);
        for (Offered one : offered) {
            Kind kind = how == Comparison.TOGETHER ? Kind.PLATE : one.recipe().kind();
            byKind.computeIfAbsent(kind, key -> new ArrayList<>()).add(one);
        }
        if (byKind.containsKey(Kind.COMPONENT)) {
            // a component with a price of its own, such as bread, is ordered like a plate
            byKind.computeIfAbsent(Kind.PLATE, key -> new ArrayList<>()).addAll(byKind.remove(Kind.COMPONENT));
        }
        List<MenuReport.Group> groups = new ArrayList<>();
        for (Kind kind : List.of(Kind.PLATE, Kind.DRINK, Kind.BREAKDOWN)) {
            List<Offered> alike = byKind.getOrDefault(kind, List.of());
            String name = how == Comparison.TOGETHER ? "all" : name(kind);
            if (alike.stream().anyMatch(one -> one.sold() > 0)) {
                groups.add(new MenuGroup(name, alike, kitchen.house().currency()).group());
            } else if (!alike.isEmpty()) {
                notes.add("None of " + name + " was sold on these days.");
            }
        }
        if (groups.size() > 1) {
            notes.add("Plates are compared with plates and drinks with drinks; averages and cuts are those of each.");
        }
        return groups;
    }

    private static String name(Kind kind) {
        return switch (kind) {
            case PLATE, COMPONENT -> "plates";
            case DRINK -> "drinks";
            case BREAKDOWN -> "breakdowns";
        };
    }
}
