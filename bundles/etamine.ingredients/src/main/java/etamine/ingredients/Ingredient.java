package etamine.ingredients;

import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.MeasureException;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * An entry of the ingredient list.
 *
 * @param item what the other modules see of it
 * @param yields where the yields of its preparations come from, by the preparation's name
 * @param note free text; empty when none
 * @param mergedInto the ingredient that took its place; one that has it is kept for the history and not listed
 */
public record Ingredient(Item item, Map<String, YieldRecord> yields, String note, Optional<String> mergedInto) {

    /** Copies the map, keeping only what belongs to a preparation. */
    public Ingredient {
        Map<String, YieldRecord> kept = new HashMap<>(yields);
        kept.keySet()
                .retainAll(item.preparations().stream().map(Preparation::name).toList());
        kept.values().removeIf(YieldRecord.NONE::equals);
        yields = Map.copyOf(kept);
    }

    /** A listed ingredient without a note. */
    public Ingredient(Item item, Map<String, YieldRecord> yields) {
        this(item, yields, "", Optional.empty());
    }

    /** A new ingredient of which nothing is known but its name and how it is counted. */
    public static Ingredient named(String id, String name, Unit countIn) {
        Item item = new Item(
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
                Optional.empty());
        return new Ingredient(item, Map.of());
    }

    /** Its identifier. */
    public String id() {
        return item.id();
    }

    /** Where the yield of a preparation comes from. */
    public YieldRecord yieldOf(String preparation) {
        return yields.getOrDefault(preparation, YieldRecord.NONE);
    }

    /** The same with another item of the same id. */
    public Ingredient with(UnaryOperator<Item> change) {
        return new Ingredient(change.apply(item), yields, note, mergedInto);
    }

    /** The same with another note. */
    public Ingredient withNote(String changed) {
        return new Ingredient(item, yields, changed, mergedInto);
    }

    /** The same with other preparations; what was recorded of preparations that are gone goes too. */
    public Ingredient withPreparations(List<Preparation> preparations, Map<String, YieldRecord> records) {
        return new Ingredient(item.withPreparations(preparations), records, note, mergedInto);
    }

    /** The same with another record of one preparation. */
    public Ingredient withYield(String preparation, YieldRecord changed) {
        Map<String, YieldRecord> records = new HashMap<>(yields);
        records.put(preparation, changed);
        return new Ingredient(item, records, note, mergedInto);
    }

    /** The same, given up for another one. */
    public Ingredient mergedInto(String other) {
        return new Ingredient(item, yields, note, Optional.of(other));
    }

    /**
     * The same with the yield that some tests of a preparation give as its working yield.
     *
     * @param tests their places in the record; all of them for the mean
     * @throws MeasureException with a sentence when there is no such preparation or test
     */
    public Ingredient accepting(String preparation, List<Integer> tests, LocalDate date, String by) {
        YieldRecord record = yieldOf(preparation);
        List<YieldTest> chosen = tests.stream()
                .distinct()
                .filter(place -> place >= 0 && place < record.tests().size())
                .map(record.tests()::get)
                .toList();
        if (chosen.size() < tests.size() || item.preparation(preparation).isEmpty()) {
            throw new MeasureException("“" + preparation + "” has no such test; it has "
                    + record.tests().size() + ".");
        }
        Ratio yield = YieldRecord.yield(chosen)
                .orElseThrow(() -> new MeasureException("Record a test of “" + preparation + "” first."));
        YieldChange change = new YieldChange(date, by, yield, YieldWords.of(chosen));
        List<Preparation> preparations = item.preparations().stream()
                .map(each ->
                        each.name().equals(preparation) ? new Preparation(preparation, yield, each.measures()) : each)
                .toList();
        return with(now -> now.withPreparations(preparations))
                .withYield(preparation, record.accepting(List.copyOf(tests), change));
    }
}
