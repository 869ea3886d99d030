package etamine.checks.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.par.Par;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Equivalence;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The part of the demo kitchen that people wrote: everything but its history. */
final class WrittenKitchen {
    private final ObjectNode file;
    private final Map<String, Item> items = new TreeMap<>();
    private final List<Recipe> recipes = new ArrayList<>();
    private final Map<String, Recipe> makers = new TreeMap<>();
    private final Map<String, List<ListedPack>> packs = new TreeMap<>();
    private final Map<String, Par> pars = new TreeMap<>();
    private final Map<String, Set<DayOfWeek>> deliveryDays = new TreeMap<>();

    WrittenKitchen(ObjectNode file) {
        this.file = file;
        file.path("ingredients").forEach(node -> ingredient(new EntryReader(node), node));
        file.path("recipes").forEach(node -> recipe(new EntryReader(node)));
        file.path("suppliers").forEach(node -> deliveryDays.put(node.path("id").asText(), days(node)));
        file.path("offers").forEach(this::offer);
        file.path("pars").forEach(this::par);
    }

    /** The day the demo kitchen takes for today. */
    LocalDate today() {
        return LocalDate.parse(file.path("demo").path("today").asText());
    }

    Map<String, Item> items() {
        return items;
    }

    List<Recipe> recipes() {
        return recipes;
    }

    /** The recipe that makes an item. */
    Optional<Recipe> maker(String item) {
        return Optional.ofNullable(makers.get(item));
    }

    /** The offers of an item as written, every price date one of them. */
    List<ListedPack> packs(String item) {
        return packs.getOrDefault(item, List.of());
    }

    Optional<Par> par(String item) {
        return Optional.ofNullable(pars.get(item));
    }

    /** Whether something of an item is on its way for that day. */
    boolean onOrder(String item, LocalDate day) {
        for (JsonNode line : file.path("onOrder")) {
            if (line.path("item").asText().equals(item)
                    && line.path("deliver").asText().equals(day.toString())) {
                return true;
            }
        }
        return false;
    }

    Set<DayOfWeek> deliveryDays(String supplier) {
        return deliveryDays.get(supplier);
    }

    /** Portions per cover by recipe, in the order written. */
    List<Map.Entry<String, Ratio>> mix() {
        List<Map.Entry<String, Ratio>> mix = new ArrayList<>();
        file.path("mix")
                .forEach(node -> mix.add(Map.entry(
                        node.path("recipe").asText(),
                        Ratio.parse(node.path("perCover").asText()))));
        return mix;
    }

    private void ingredient(EntryReader entry, JsonNode node) {
        List<Preparation> preparations = new ArrayList<>();
        for (EntryReader each : entry.each("preparations")) {
            preparations.add(
                    new Preparation(each.needed("name"), each.ratio("yield").orElse(Ratio.ONE), measures(each)));
        }
        String id = entry.needed("id");
        items.put(
                id,
                new Item(
                        id,
                        entry.needed("name"),
                        entry.text("group"),
                        false,
                        entry.text("storage"),
                        entry.period("keeps"),
                        Quantity.parse("1 " + node.path("countIn").asText()).unit(),
                        measures(entry),
                        preparations,
                        Allergens.unknown(),
                        entry.price("price")));
    }

    private static List<Equivalence> measures(EntryReader entry) {
        List<Equivalence> measures = new ArrayList<>();
        for (EntryReader each : entry.each("measures")) {
            measures.add(new Equivalence(
                    each.quantity("of").orElseThrow(), each.quantity("is").orElseThrow()));
        }
        return measures;
    }

    private void recipe(EntryReader entry) {
        List<Use> uses = new ArrayList<>();
        for (EntryReader line : entry.each("uses")) {
            Optional<String> as = Optional.of(line.text("as")).filter(text -> !text.isEmpty());
            Basis basis = line.choice("basis", Basis.class).orElse(as.isPresent() ? Basis.EP : Basis.AP);
            uses.add(new Use(line.needed("item"), line.quantity("quantity").orElseThrow(), as, basis));
        }
        List<Make> makes = new ArrayList<>();
        for (EntryReader line : entry.each("makes")) {
            makes.add(new Make(line.needed("item"), line.quantity("quantity").orElseThrow(), line.price("credit")));
        }
        Recipe recipe = new Recipe(
                entry.needed("id"),
                entry.needed("name"),
                entry.choice("kind", Kind.class).orElseThrow(),
                uses,
                makes,
                entry.quantity("portion"),
                entry.period("keeps"),
                entry.whole("tested", 0),
                List.of(),
                Optional.empty(),
                entry.text("notes"));
        recipes.add(recipe);
        makes.forEach(make -> made(recipe, make));
    }

    private void made(Recipe recipe, Make make) {
        boolean main = make == recipe.makes().get(0);
        List<Equivalence> portion = main
                ? recipe.portion()
                        .map(size -> List.of(new Equivalence(Quantity.of(1, Unit.PORTION), size)))
                        .orElse(List.of())
                : List.of();
        makers.put(make.item(), recipe);
        items.put(
                make.item(),
                new Item(
                        make.item(),
                        recipe.name(),
                        "",
                        true,
                        "chilled",
                        main ? recipe.keeps() : Optional.empty(),
                        make.quantity().unit(),
                        portion,
                        List.of(),
                        Allergens.unknown(),
                        Optional.empty()));
    }

    private void offer(JsonNode node) {
        String item = node.path("item").asText();
        packs.computeIfAbsent(item, key -> new ArrayList<>()).add(ListedPack.of(node, items.get(item)));
    }

    private void par(JsonNode node) {
        Map<DayOfWeek, Quantity> weekdays = new EnumMap<>(DayOfWeek.class);
        node.path("weekdays")
                .properties()
                .forEach(day -> weekdays.put(
                        day(day.getKey()), Quantity.parse(day.getValue().asText())));
        EntryReader entry = new EntryReader(node);
        String item = entry.needed("item");
        pars.put(
                item,
                new Par(
                        item,
                        entry.quantity("par").orElseThrow(),
                        weekdays,
                        entry.quantity("orderAt"),
                        entry.quantity("capacity")));
    }

    private static Set<DayOfWeek> days(JsonNode supplier) {
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        supplier.path("deliveryDays").forEach(day -> days.add(day(day.asText())));
        return days;
    }

    private static DayOfWeek day(String letters) {
        for (DayOfWeek day : DayOfWeek.values()) {
            if (day.name().startsWith(letters)) {
                return day;
            }
        }
        throw new IllegalArgumentException("No weekday starts with " + letters);
    }
}
