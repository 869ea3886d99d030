package etamine.costing.internal.larder;

import etamine.costing.internal.history.BookHistory;
import etamine.costing.internal.live.LiveCosts;
import etamine.costing.internal.rules.ShelvedCostSettings;
import etamine.kitchen.house.House;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.price.PriceQuote;
import etamine.kitchen.price.PriceSource;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Making;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.PairedDrink;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.recipe.Requirement;
import etamine.kitchen.recipe.Standing;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.measures.Equivalence;
import etamine.measures.MeasureStyle;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import etamine.storage.Book;
import etamine.storage.Document;
import etamine.testing.SetClock;
import etamine.testing.VolatileBook;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;

/** A few items and recipes for reckoning with, written as people write them. Recipes are added after what they use. */
public final class Larder implements Kitchen {
    public final Book book = new VolatileBook();
    public final ShelvedCostSettings settings = new ShelvedCostSettings(book);
    private static final LocalDate MOVED = LocalDate.of(2026, 11, 22);
    private Map<String, Item> itemsThen = Map.of();
    private List<Recipe> orderThen = List.of();
    private final Map<String, Item> items = new TreeMap<>();
    private final Map<String, Recipe> recipes = new TreeMap<>();
    private final List<Recipe> order = new ArrayList<>();
    private Map<String, Recipe> snapshot = Map.of();
    /** What a demand takes of bought things; nothing unless a test says how. */
    public BiFunction<Larder, Map<String, Quantity>, Map<String, Quantity>> require = (larder, wanted) -> Map.of();

    private Currency currency = Currency.getInstance("EUR");

    /** A recipe being written. */
    public final class Writing {
        private final String id;
        private final List<Use> uses = new ArrayList<>();
        private final List<Make> makes = new ArrayList<>();
        private Optional<Quantity> portion = Optional.empty();
        private Optional<MenuPrice> menu = Optional.empty();
        private final List<Step> steps = new ArrayList<>();
        private final List<PairedDrink> drinks = new ArrayList<>();
        private Making making = Making.PLAIN;

        Writing(String id) {
            this.id = id;
        }

        public Writing uses(String quantity, String item) {
            uses.add(new Use(item, Quantity.parse(quantity), Optional.empty(), Basis.AP));
            return this;
        }

        public Writing usesTrimmed(String quantity, String item, String as) {
            uses.add(new Use(item, Quantity.parse(quantity), Optional.of(as), Basis.EP));
            return this;
        }

        public Writing makes(String quantity, String item, String... credit) {
            Optional<UnitPrice> value =
                    credit.length == 0 ? Optional.empty() : Optional.of(UnitPrice.of(credit[0], credit[1]));
            makes.add(new Make(item, Quantity.parse(quantity), value));
            return this;
        }

        public Writing portion(String quantity) {
            portion = Optional.of(Quantity.parse(quantity));
            return this;
        }

        public Writing sold(String price, String tax, String qFactor) {
            menu = Optional.of(new MenuPrice(new BigDecimal(price), new BigDecimal(tax), new BigDecimal(qFactor)));
            return this;
        }

        public Writing marketValue(String amount, String per) {
            Make last = makes.remove(makes.size() - 1);
            makes.add(new Make(last.item(), last.quantity(), last.credit(), Optional.of(UnitPrice.of(amount, per))));
            return this;
        }

        public Writing allowing(String qFactorAmount, String packaging) {
            menu = menu.map(price ->
                    price.withQFactorAmount(new BigDecimal(qFactorAmount)).withPackaging(new BigDecimal(packaging)));
            return this;
        }

        public Writing target(String percent) {
            menu = menu.map(price -> price.withTarget(Optional.of(new BigDecimal(percent))));
            return this;
        }

        public Writing step(String hands, String station) {
            steps.add(new Step(
                    "s" + steps.size(),
                    "",
                    Duration.parse(hands),
                    Duration.ZERO,
                    "",
                    List.of(),
                    "",
                    Duration.ZERO,
                    station));
            return this;
        }

        public Writing at(String station) {
            making = making.withStation(station);
            return this;
        }

        public Writing pours(String drink, String level) {
            drinks.add(new PairedDrink(drink, level));
            return this;
        }

        public Larder done() {
            Recipe recipe = new Recipe(
                    id, id, Kind.COMPONENT, uses, makes, portion, steps, menu, making, Standing.DRAFT, drinks, "");
            put(recipe);
            return Larder.this;
        }
    }

    /** Writes a recipe, over the one of its id if there is one. */
    public void put(Recipe recipe) {
        for (Make make : recipe.makes()) {
            items.merge(make.item(), made(recipe, make), (old, made) -> old.made() ? made : old);
        }
        Recipe before = recipes.put(recipe.id(), recipe);
        if (before == null) {
            order.add(recipe);
        } else {
            order.set(order.indexOf(before), recipe);
        }
        snapshot = Collections.unmodifiableMap(new TreeMap<>(recipes));
        touch();
    }

    private static Item made(Recipe recipe, Make make) {
        List<Equivalence> measures = recipe.portion()
                .filter(size -> !size.unit().isLike(Unit.PORTION))
                .map(size -> List.of(new Equivalence(Quantity.of(1, Unit.PORTION), size)))
                .orElse(List.of());
        return item(make.item(), make.quantity().unit(), true, measures, List.of(), Optional.empty());
    }

    /** From here on what is written is of 22 November; what was written before stood until then. */
    public Larder remember() {
        itemsThen = Map.copyOf(items);
        orderThen = List.copyOf(order);
        return this;
    }

    public BookHistory history(PriceSource... more) {
        return new BookHistory(costs(more), itemList, this);
    }

    public Larder bought(String id, String price, String per, String... measures) {
        UnitPrice written = UnitPrice.of(price, per);
        put(item(id, written.per().unit(), false, measures(measures), List.of(), Optional.of(written)));
        return this;
    }

    public Larder unpriced(String id, String countIn) {
        put(item(id, Quantity.parse("1 " + countIn).unit(), false, List.of(), List.of(), Optional.empty()));
        return this;
    }

    public Larder prepared(String id, String as, String yield, String... measures) {
        Item item = items.get(id);
        Preparation preparation = new Preparation(as, Ratio.parse(yield), measures(measures));
        put(item(id, item.countIn(), false, item.measures(), List.of(preparation), item.writtenPrice()));
        return this;
    }

    public Writing recipe(String id) {
        return new Writing(id);
    }

    /** The same recipe as something to drink. */
    public Larder asDrink(String id) {
        Recipe drink = recipes.get(id).withKind(Kind.DRINK);
        order.replaceAll(recipe -> recipe.id().equals(id) ? drink : recipe);
        recipes.put(id, drink);
        snapshot = Collections.unmodifiableMap(new TreeMap<>(recipes));
        touch();
        return this;
    }

    Larder in(String currencyCode) {
        currency = Currency.getInstance(currencyCode);
        return this;
    }

    public LiveCosts costs(PriceSource... more) {
        List<PriceSource> sources = new ArrayList<>(List.of(more));
        sources.add(written());
        return new LiveCosts(book, this, itemList, settings).with(recipeList, sources);
    }

    private static Instant moved() {
        return MOVED.atStartOfDay(ZoneOffset.UTC).toInstant();
    }

    /** The prices written on the items, with those before {@link #remember} as they were until 22 November. */
    public PriceSource written() {
        PriceSource now = source("written", 40, Map.of());
        return new PriceSource() {
            @Override
            public String id() {
                return now.id();
            }

            @Override
            public String label() {
                return now.label();
            }

            @Override
            public int rank() {
                return now.rank();
            }

            @Override
            public Optional<PriceQuote> quote(String item) {
                return now.quote(item);
            }

            @Override
            public Optional<PriceQuote> quote(String item, LocalDate on) {
                return history(item).stream()
                        .filter(quote -> !quote.asOf().orElseThrow().isAfter(on))
                        .reduce((earlier, later) -> later);
            }

            @Override
            public List<PriceQuote> history(String item) {
                List<PriceQuote> history = new ArrayList<>();
                Optional.ofNullable(itemsThen.get(item))
                        .flatMap(Item::writtenPrice)
                        .ifPresent(price -> history.add(dated(item, price, MOVED.minusDays(30))));
                now.quote(item).ifPresent(quote -> history.add(quote.from(MOVED)));
                return history;
            }

            private PriceQuote dated(String item, UnitPrice price, LocalDate day) {
                return new PriceQuote(item, price, id(), "written price", Optional.of(day));
            }
        };
    }

    /** A source that knows the given prices, or the written ones when none are given. */
    public PriceSource source(String id, int rank, Map<String, UnitPrice> prices) {
        return new PriceSource() {
            @Override
            public String id() {
                return id;
            }

            @Override
            public String label() {
                return id;
            }

            @Override
            public int rank() {
                return rank;
            }

            @Override
            public Optional<PriceQuote> quote(String item) {
                Optional<UnitPrice> price = prices.isEmpty()
                        ? Optional.ofNullable(items.get(item)).flatMap(Item::writtenPrice)
                        : Optional.ofNullable(prices.get(item));
                return price.map(found -> new PriceQuote(item, found, id, id + " price", Optional.empty()));
            }
        };
    }

    private static List<Equivalence> measures(String... texts) {
        return Arrays.stream(texts)
                .map(text -> text.split(" = "))
                .map(sides -> new Equivalence(Quantity.parse(sides[0]), Quantity.parse(sides[1])))
                .toList();
    }

    private static Item item(
            String id,
            Unit countIn,
            boolean made,
            List<Equivalence> measures,
            List<Preparation> preparations,
            Optional<UnitPrice> price) {
        return new Item(
                id, id, "", made, "", Optional.empty(), countIn, measures, preparations, Allergens.unknown(), price);
    }

    private void put(Item item) {
        items.put(item.id(), item);
        touch();
    }

    private void touch() {
        book.write("Change the larder", transaction -> {
            long revision = book.revision();
            return transaction.save("larder", "state", Document.ANY, "{\"at\":" + revision + "}");
        });
    }

    @Override
    public House house() {
        return new House("Test", currency, ZoneId.of("UTC"), MeasureStyle.METRIC);
    }

    @Override
    public void change(House house) {
        currency = house.currency();
    }

    @Override
    public Clock clock() {
        return SetClock.at("2026-11-24T12:00:00Z");
    }

    public final Items itemList = new Items() {
        @Override
        public Optional<Item> find(String id) {
            return Optional.ofNullable(items.get(id));
        }

        @Override
        public Map<String, Item> all() {
            return Map.copyOf(items);
        }

        @Override
        public Map<String, Item> asOf(Instant at) {
            return at.isBefore(moved()) && !itemsThen.isEmpty() ? itemsThen : all();
        }
    };

    public final Recipes recipeList = new Recipes() {
        @Override
        public Map<String, Recipe> all() {
            return snapshot;
        }

        @Override
        public Optional<Recipe> find(String id) {
            return Optional.ofNullable(recipes.get(id));
        }

        @Override
        public List<Recipe> inOrder() {
            return List.copyOf(order);
        }

        @Override
        public List<Recipe> inOrderAsOf(Instant at) {
            return at.isBefore(moved()) && !orderThen.isEmpty() ? orderThen : inOrder();
        }

        @Override
        public Optional<Recipe> maker(String item) {
            return order.stream()
                    .filter(recipe ->
                            recipe.makes().stream().anyMatch(make -> make.item().equals(item)))
                    .findFirst();
        }

        @Override
        public List<Recipe> usersOf(String item) {
            return order.stream()
                    .filter(recipe ->
                            recipe.uses().stream().anyMatch(use -> use.item().equals(item)))
                    .toList();
        }

        @Override
        public Requirement require(Map<String, Quantity> wanted, Map<String, Quantity> available) {
            return new Requirement(require.apply(Larder.this, wanted), Map.of(), Map.of(), List.of());
        }
    };
}
