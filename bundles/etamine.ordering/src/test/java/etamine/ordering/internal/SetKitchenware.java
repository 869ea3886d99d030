package etamine.ordering.internal;

import etamine.kitchen.covers.Diary;
import etamine.kitchen.covers.Sale;
import etamine.kitchen.covers.WrittenUse;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.recipe.Requirement;
import etamine.kitchen.recipe.Use;
import etamine.kitchen.stock.Lot;
import etamine.kitchen.stock.Place;
import etamine.kitchen.stock.Stock;
import etamine.kitchen.stock.StockLevel;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Small stand-ins for the services of other modules, told by a test what they know. */
final class SetKitchenware {
    private SetKitchenware() {}

    static Item item(String id, Unit countIn) {
        return new Item(
                id,
                id.substring(0, 1).toUpperCase() + id.substring(1),
                "",
                false,
                "",
                Optional.empty(),
                countIn,
                List.of(),
                List.of(),
                Allergens.unknown(),
                Optional.empty());
    }

    static Recipe recipe(String id, String makes, Use... uses) {
        Make make = new Make(id, Quantity.parse(makes), Optional.empty());
        return new Recipe(
                id,
                id,
                Kind.PLATE,
                List.of(uses),
                List.of(make),
                Optional.empty(),
                Optional.empty(),
                0,
                List.of(),
                Optional.empty(),
                "");
    }

    static Use use(String item, String quantity) {
        return new Use(item, Quantity.parse(quantity), Optional.empty(), Basis.AP);
    }

    /** Items by id. */
    static final class SetItems implements Items {
        private final Map<String, Item> all = new TreeMap<>();

        SetItems(Item... items) {
            for (Item item : items) {
                all.put(item.id(), item);
            }
        }

        @Override
        public Optional<Item> find(String id) {
            return Optional.ofNullable(all.get(id));
        }

        @Override
        public Map<String, Item> all() {
            return all;
        }
    }

    /** The shelf. */
    static final class SetStock implements Stock {
        private final Map<String, StockLevel> levels = new TreeMap<>();

        SetStock lot(String item, String quantity, String useBy) {
            Quantity amount = Quantity.parse(quantity);
            Optional<LocalDate> last = useBy.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(useBy));
            List<Lot> lots =
                    new ArrayList<>(levels.containsKey(item) ? levels.get(item).lots() : List.of());
            lots.add(new Lot(item, "walk-in", "", amount, last, Optional.empty()));
            Quantity sum =
                    lots.stream().map(Lot::quantity).reduce(Quantity::plus).orElseThrow();
            levels.put(item, new StockLevel(item, sum, lots, Optional.empty()));
            return this;
        }

        @Override
        public Map<String, StockLevel> levels() {
            return levels;
        }

        @Override
        public Map<String, StockLevel> levels(Instant at) {
            return levels;
        }

        @Override
        public List<Place> places() {
            return List.of();
        }
    }

    /** The diary. */
    static final class SetDiary implements Diary {
        final Map<LocalDate, Integer> covers = new TreeMap<>();
        final Map<String, Ratio> mix = new TreeMap<>();
        final List<Sale> sales = new ArrayList<>();
        final List<WrittenUse> written = new ArrayList<>();

        @Override
        public Map<LocalDate, Integer> covers(LocalDate from, LocalDate to) {
            Map<LocalDate, Integer> days = new TreeMap<>(covers);
            days.keySet().removeIf(day -> day.isBefore(from) || day.isAfter(to));
            return days;
        }

        @Override
        public Map<String, Ratio> mix() {
            return mix;
        }

        @Override
        public List<Sale> sales(LocalDate from, LocalDate to) {
            return sales.stream()
                    .filter(sale -> !sale.date().isBefore(from) && !sale.date().isAfter(to))
                    .toList();
        }

        @Override
        public List<WrittenUse> writtenUse(LocalDate from, LocalDate to) {
            return written.stream()
                    .filter(use -> !use.date().isBefore(from) && !use.date().isAfter(to))
                    .toList();
        }
    }

    /** Recipes that make one thing each, in the dimension it is used in; followed by plain recursion. */
    static final class SetRecipes implements Recipes {
        private final Map<String, Recipe> all = new TreeMap<>();

        SetRecipes(Recipe... recipes) {
            for (Recipe recipe : recipes) {
                all.put(recipe.id(), recipe);
            }
        }

        @Override
        public Map<String, Recipe> all() {
            return all;
        }

        @Override
        public Optional<Recipe> find(String id) {
            return Optional.ofNullable(all.get(id));
        }

        @Override
        public List<Recipe> inOrder() {
            return List.copyOf(all.values());
        }

        @Override
        public Optional<Recipe> maker(String item) {
            return find(item);
        }

        @Override
        public List<Recipe> usersOf(String item) {
            return all.values().stream()
                    .filter(recipe ->
                            recipe.uses().stream().anyMatch(use -> use.item().equals(item)))
                    .toList();
        }

        @Override
        public Requirement require(Map<String, Quantity> wanted, Map<String, Quantity> available) {
            Map<String, Quantity> left = new TreeMap<>(available);
            Map<String, Quantity> bought = new TreeMap<>();
            Map<String, Map<String, Quantity>> parts = new TreeMap<>();
            wanted.forEach((item, quantity) -> follow(item, quantity, item, left, bought, parts));
            return new Requirement(bought, Map.of(), parts, List.of());
        }

        private void follow(
                String item,
                Quantity quantity,
                String asker,
                Map<String, Quantity> left,
                Map<String, Quantity> bought,
                Map<String, Map<String, Quantity>> parts) {
            Recipe recipe = all.get(item);
            if (recipe == null) {
                bought.merge(item, quantity, Quantity::plus);
                parts.computeIfAbsent(item, i -> new TreeMap<>()).merge(asker, quantity, Quantity::plus);
                return;
            }
            Quantity there = left.getOrDefault(item, Quantity.zero(quantity.unit()));
            Quantity taken = there.compareTo(quantity) < 0 ? there : quantity;
            left.put(item, there.minus(taken));
            Ratio batches =
                    quantity.minus(taken).dividedBy(recipe.makes().get(0).quantity());
            recipe.uses().forEach(use -> follow(use.item(), use.quantity().times(batches), item, left, bought, parts));
        }
    }
}
