package etamine.testing;

import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Items;
import etamine.kitchen.item.Preparation;
import etamine.measures.Equivalence;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.time.Period;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Items as a test gives them. */
public final class GivenItems implements Items {
    private final Map<String, Item> items = new TreeMap<>();

    /** Adds a bought item; measures are written as {@code 1 ea = 750 g}. */
    public GivenItems with(String id, Unit countIn, String... measures) {
        return with(item(id, countIn, measures));
    }

    /** Adds any item. */
    public GivenItems with(Item item) {
        items.put(item.id(), item);
        return this;
    }

    /** A bought item whose name is its id with a capital. */
    public static Item item(String id, Unit countIn, String... measures) {
        String name =
                id.substring(0, 1).toUpperCase(Locale.ROOT) + id.substring(1).replace('-', ' ');
        return new Item(
                id,
                name,
                "",
                false,
                "",
                Optional.empty(),
                countIn,
                Stream.of(measures).map(GivenItems::measure).toList(),
                List.of(),
                Allergens.unknown(),
                Optional.empty());
    }

    /** The same item that keeps so many days. */
    public static Item keeping(Item item, int days) {
        return new Item(
                item.id(),
                item.name(),
                item.group(),
                item.made(),
                item.storage(),
                Optional.of(Period.ofDays(days)),
                item.countIn(),
                item.measures(),
                item.preparations(),
                item.allergens(),
                item.writtenPrice());
    }

    /** The same item with one preparation of that yield. */
    public static Item prepared(Item item, String preparation, String yield, String... measures) {
        Preparation way = new Preparation(
                preparation,
                Ratio.parse(yield),
                Stream.of(measures).map(GivenItems::measure).toList());
        return new Item(
                item.id(),
                item.name(),
                item.group(),
                item.made(),
                item.storage(),
                item.keeps(),
                item.countIn(),
                item.measures(),
                List.of(way),
                item.allergens(),
                item.writtenPrice());
    }

    private static Equivalence measure(String text) {
        String[] sides = text.split("=");
        return new Equivalence(Quantity.parse(sides[0].strip()), Quantity.parse(sides[1].strip()));
    }

    @Override
    public Optional<Item> find(String id) {
        return Optional.ofNullable(items.get(id));
    }

    @Override
    public Map<String, Item> all() {
        return new TreeMap<>(items);
    }
}
