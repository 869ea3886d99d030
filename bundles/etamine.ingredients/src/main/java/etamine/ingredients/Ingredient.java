package etamine.ingredients;

import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.Equivalence;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An entry of the ingredient list.
 *
 * @param item what the other modules see of it
 * @param yieldNotes where a preparation's yield comes from, by the preparation's name; such as a test in this kitchen
 */
public record Ingredient(Item item, Map<String, String> yieldNotes) {

    /** Copies the map. */
    public Ingredient {
        yieldNotes = Map.copyOf(yieldNotes);
    }

    /** A new ingredient of which nothing is known but its name and how it is counted. */
    public static Ingredient named(String id, String name, Unit countIn) {
        return new Ingredient(
                new Item(
                        id,
                        name,
                        "",
                        false,
                        "",
                        Optional.empty(),
                        countIn,
                        List.of(),
                        List.of(),
                        Allergens.unknown(),
                        Optional.empty()),
                Map.of());
    }

    /** Its identifier. */
    public String id() {
        return item.id();
    }

    /** The same under another name. */
    public Ingredient withName(String name) {
        return with(name, item.group(), item.storage(), item.keeps(), item.countIn());
    }

    /** The same under another heading. */
    public Ingredient withGroup(String group) {
        return with(item.name(), group, item.storage(), item.keeps(), item.countIn());
    }

    /** The same kept elsewhere. */
    public Ingredient withStorage(String storage) {
        return with(item.name(), item.group(), storage, item.keeps(), item.countIn());
    }

    /** The same with another keeping time. */
    public Ingredient withKeeps(Optional<Period> keeps) {
        return with(item.name(), item.group(), item.storage(), keeps, item.countIn());
    }

    /** The same counted in another unit. */
    public Ingredient withCountIn(Unit countIn) {
        return with(item.name(), item.group(), item.storage(), item.keeps(), countIn);
    }

    /** The same with other measures of its own. */
    public Ingredient withMeasures(List<Equivalence> measures) {
        return with(measures, item.preparations(), item.allergens(), item.writtenPrice());
    }

    /** The same with other preparations; notes of preparations that are gone go too. */
    public Ingredient withPreparations(List<Preparation> preparations, Map<String, String> notes) {
        return new Ingredient(with(item.measures(), preparations, item.allergens(), item.writtenPrice()).item, notes);
    }

    /** The same with other allergens. */
    public Ingredient withAllergens(Allergens allergens) {
        return with(item.measures(), item.preparations(), allergens, item.writtenPrice());
    }

    /** The same with another written price. */
    public Ingredient withPrice(Optional<UnitPrice> price) {
        return with(item.measures(), item.preparations(), item.allergens(), price);
    }

    private Ingredient with(String name, String group, String storage, Optional<Period> keeps, Unit countIn) {
        return new Ingredient(
                new Item(
                        item.id(),
                        name,
                        group,
                        item.made(),
                        storage,
                        keeps,
                        countIn,
                        item.measures(),
                        item.preparations(),
                        item.allergens(),
                        item.writtenPrice(),
                        item.diet()),
                yieldNotes);
    }

    private Ingredient with(
            List<Equivalence> measures,
            List<Preparation> preparations,
            Allergens allergens,
            Optional<UnitPrice> price) {
        return new Ingredient(
                new Item(
                        item.id(),
                        item.name(),
                        item.group(),
                        item.made(),
                        item.storage(),
                        item.keeps(),
                        item.countIn(),
                        measures,
                        preparations,
                        allergens,
                        price,
                        item.diet()),
                yieldNotes);
    }
}
