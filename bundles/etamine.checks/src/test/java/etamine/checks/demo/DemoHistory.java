package etamine.checks.demo;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.item.Item;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Makes the history of the demo kitchen from what people wrote in its file: covers, sales, opening stock and movements.
 * The same written part always gives the same history. Run {@link #main} after a change to the written part.
 */
public final class DemoHistory {
    /** What goes into staff meals and the kitchen's own coffee in a week, beside the menu. */
    private static final Map<String, String> BESIDE_THE_MENU = Map.ofEntries(
            Map.entry("coffee", "1.1 kg"),
            Map.entry("tea", "90 g"),
            Map.entry("milk", "900 ml"),
            Map.entry("peas", "500 g"),
            Map.entry("yoghurt", "900 g"),
            Map.entry("brown-shrimp", "240 g"),
            Map.entry("strong-flour", "900 g"),
            Map.entry("tomato-paste", "300 g"),
            Map.entry("egg", "18 ea"),
            Map.entry("olive-oil", "360 ml"),
            Map.entry("potato", "3 kg"),
            Map.entry("onion", "1.5 kg"),
            Map.entry("carrot", "1.2 kg"),
            Map.entry("smooth-mustard", "90 g"),
            Map.entry("cocoa", "30 g"),
            Map.entry("bacon", "300 g"));
    /** Made things that are put on a shelf, dated and counted. */
    private static final Set<String> SHELVED = Set.of(
            "fowl-jus",
            "rendered-fat",
            "pickled-pear",
            "pickled-shallots",
            "preserved-lemon",
            "hazelnut-crumb",
            "herb-oil",
            "mustard-dressing",
            "brown-butter",
            "shortbread",
            "candied-orange",
            "ginger-syrup");
    /** Taken off the staff menu, and nobody looked into its tray again: a lot of it is past its day. */
    private static final String FORGOTTEN = "brown-shrimp";

    private static final int FORGOTTEN_DAYS = 5;
    private static final int OPEN_DAYS = 6;
    private static final long GRAIN = 1_000;
    private static final long LARGE = 1_000_000;

    private final WrittenKitchen kitchen;
    private final Kitchenwork work;
    private final MadeCosts madeCosts;
    private final ServiceDays service;
    private final LocalDate today;
    private final LocalDate first;

    DemoHistory(ObjectNode file) {
        kitchen = new WrittenKitchen(file);
        work = new Kitchenwork(kitchen);
        madeCosts = new MadeCosts(kitchen, work);
        service = new ServiceDays(kitchen);
        today = kitchen.today();
        first = today.minusWeeks(ServiceDays.WEEKS_BACK);
    }

    /** Writes the history into the demo kitchen's file. */
    public static void main(String[] arguments) {
        ObjectNode file = DemoFile.read();
        new DemoHistory(file).into(file);
        DemoFile.write(file);
    }

    /** Puts the history in place of the one that is there. */
    void into(ObjectNode file) {
        List<ItemHistory.Entry> entries = entries();
        ArrayNode stock = DemoFile.JSON.createArrayNode();
        ArrayNode movements = DemoFile.JSON.createArrayNode();
        int number = 0;
        for (ItemHistory.Entry entry : entries) {
            if (entry.kind().equals("opening")) {
                stock.add(json(entry, "opening-" + entry.item().id()));
            } else {
                number++;
                movements.add(json(entry, String.format("m-%05d", number)));
            }
        }
        file.set("stock", stock);
        file.set("movements", movements);
        file.set("covers", covers());
        file.set("sales", sales());
    }

    private ArrayNode covers() {
        ArrayNode covers = DemoFile.JSON.createArrayNode();
        service.covers()
                .forEach((day, count) ->
                        covers.addObject().put("date", day.toString()).put("covers", count));
        return covers;
    }

    private ArrayNode sales() {
        ArrayNode sales = DemoFile.JSON.createArrayNode();
        service.sales(today)
                .forEach((day, sold) -> sold.forEach((recipe, portions) -> sales.addObject()
                        .put("date", day.toString())
                        .put("recipe", recipe)
                        .put("sold", portions)));
        return sales;
    }

    private List<ItemHistory.Entry> entries() {
        Map<String, ItemDoors> use = use();
        List<ItemHistory.Entry> entries = new ArrayList<>();
        for (Item item : kitchen.items().values()) {
            ItemDoors daily = use.getOrDefault(item.id(), new ItemDoors());
            if (SHELVED.contains(item.id())) {
                entries.addAll(history(item, Supply.made(item), daily));
            } else if (!kitchen.packs(item.id()).isEmpty()) {
                long weekly = daily.total() / (ServiceDays.WEEKS_BACK + 2);
                entries.addAll(
                        history(item, Supply.bought(kitchen, item, weekly).orElseThrow(), daily));
            }
        }
        entries.sort(Comparator.comparing(ItemHistory.Entry::at)
                .thenComparing(ItemHistory.Entry::time)
                .thenComparing(entry -> entry.item().id()));
        return entries;
    }

    private List<ItemHistory.Entry> history(Item item, Supply supply, ItemDoors daily) {
        ItemHistory.Terms terms = new ItemHistory.Terms(
                kitchen.par(item.id()),
                kitchen.onOrder(item.id(), today),
                Optional.of(today.minusDays(FORGOTTEN_DAYS))
                        .filter(from -> item.id().equals(FORGOTTEN)));
        return new ItemHistory(item, supply, daily, terms).upTo(today, first);
    }

    /** What every open day takes of each item in whole grams, millilitres or pieces, what is left over carried on. */
    private Map<String, ItemDoors> use() {
        Carried menu = new Carried();
        Carried staff = new Carried();
        Map<String, ItemDoors> use = new TreeMap<>();
        for (LocalDate day : service.covers().keySet()) {
            work.takes(service.guessed(day)).forEach((item, amount) -> {
                long whole = menu.whole(item, amount);
                use.computeIfAbsent(item, key -> new ItemDoors()).sell(day, whole);
            });
            BESIDE_THE_MENU.forEach((item, weekly) -> {
                long whole = staff.whole(item, Quantity.parse(weekly).toBase() / OPEN_DAYS);
                boolean forgotten = item.equals(FORGOTTEN) && !day.isBefore(today.minusDays(FORGOTTEN_DAYS));
                if (!forgotten) {
                    use.computeIfAbsent(item, key -> new ItemDoors()).feed(day, whole);
                }
            });
        }
        UnusualDays.ALL.forEach(event -> use.computeIfAbsent(event.item(), key -> new ItemDoors())
                .happens(today.minusDays(event.daysAgo()), event.kind(), event.base(), event.reason()));
        return use;
    }

    /** Whole grams, millilitres or pieces, what is left over kept for the next day. */
    private static final class Carried {
        private final Map<String, Long> rest = new HashMap<>();

        long whole(String item, long amount) {
            long exact = amount + rest.getOrDefault(item, 0L);
            rest.put(item, exact % GRAIN);
            return exact / GRAIN * GRAIN;
        }
    }

    private ObjectNode json(ItemHistory.Entry entry, String id) {
        ObjectNode json = DemoFile.JSON.createObjectNode().put("id", id);
        json.put("at", entry.at() + "T" + entry.time() + ":00Z");
        if (!entry.kind().equals("opening")) {
            json.put("kind", entry.kind());
        }
        Dimension dimension = entry.item().dimension();
        json.put("item", entry.item().id()).put("place", place(entry.item()));
        json.put("quantity", shown(dimension, entry.amount()).toString());
        if (!entry.useBy().equals(LocalDate.MAX)) {
            json.put("useBy", entry.useBy().toString());
        }
        unitCost(entry)
                .ifPresent(price -> json.putObject("unitCost")
                        .put("amount", price.amount().toPlainString())
                        .put("per", price.per().toString()));
        entry.list()
                .filter(list -> entry.kind().equals("received"))
                .ifPresent(list -> json.put("supplier", list.supplier()));
        kitchen.maker(entry.item().id())
                .filter(recipe -> entry.kind().equals("made"))
                .ifPresent(recipe -> json.put("recipe", recipe.id()));
        if (!entry.reason().isEmpty()) {
            json.put("reason", entry.reason());
        }
        return json;
    }

    private Optional<UnitPrice> unitCost(ItemHistory.Entry entry) {
        Dimension dimension = entry.item().dimension();
        boolean comes = Set.of("opening", "received", "made", "brought").contains(entry.kind());
        if (entry.item().made() && comes) {
            return Optional.of(
                    ListedPack.unitPrice(madeCosts.perBase(entry.item().id(), entry.at()), dimension));
        }
        return entry.list().map(list -> list.unitPrice(dimension));
    }

    private static Quantity shown(Dimension dimension, long base) {
        Quantity quantity = Quantity.fromBase(dimension, base);
        boolean large = Math.abs(base) >= LARGE;
        return switch (dimension) {
            case MASS -> quantity.in(large ? Unit.KG : Unit.G);
            case VOLUME -> quantity.in(large ? Unit.L : Unit.ML);
            default -> quantity;
        };
    }

    private static String place(Item item) {
        return switch (item.group()) {
            case "Fish" -> item.storage().equals("chilled") ? "fish-drawer" : "dry-store";
            case "Drinks" -> "cellar";
            default ->
                switch (item.storage()) {
                    case "chilled" -> "walk-in";
                    case "frozen" -> "freezer";
                    default -> "dry-store";
                };
        };
    }
}
