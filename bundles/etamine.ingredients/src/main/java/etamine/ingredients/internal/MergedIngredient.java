package etamine.ingredients.internal;

import etamine.ingredients.Ingredient;
import etamine.ingredients.YieldRecord;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Diet;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.Conversion;
import etamine.measures.Converter;
import etamine.measures.Equivalence;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The survivor of a merge: its own facts, and what only the other one has. Allergens and ways of eating are joined on
 * the careful side.
 *
 * @param from the one that goes
 * @param into the one that stays
 */
record MergedIngredient(Ingredient from, Ingredient into) {

    Ingredient result() {
        Item one = into.item();
        Item other = from.item();
        List<Equivalence> measures = measures();
        Item joined = one.withGroup(one.group().isEmpty() ? other.group() : one.group())
                .withStorage(one.storage().isEmpty() ? other.storage() : one.storage())
                .withKeeps(one.keeps().or(other::keeps))
                .withMeasures(measures)
                .withAllergens(allergens(one.allergens(), other.allergens()))
                .withDiet(diet(one.diet(), other.diet()))
                .withPrice(one.writtenPrice().or(() -> price(measures)));
        String note = into.note().isEmpty() ? from.note() : into.note();
        return new Ingredient(joined, into.yields(), note, into.mergedInto())
                .withPreparations(preparations(), records());
    }

    private List<Equivalence> measures() {
        List<Equivalence> measures = new ArrayList<>(into.item().measures());
        for (Equivalence measure : from.item().measures()) {
            Conversion known =
                    Converter.of(measures).convert(measure.of(), measure.is().unit());
            if (known instanceof Conversion.Missing) {
                measures.add(measure);
            }
        }
        return measures;
    }

    private Optional<UnitPrice> price(List<Equivalence> measures) {
        Converter converter = Converter.of(measures);
        return from.item()
                .writtenPrice()
                .filter(price -> converter.convert(price.per(), into.item().countIn()) instanceof Conversion.Converted);
    }

    private Stream<Preparation> carried() {
        return from.item().preparations().stream()
                .filter(preparation ->
                        into.item().preparation(preparation.name()).isEmpty());
    }

    private List<Preparation> preparations() {
        return Stream.concat(into.item().preparations().stream(), carried()).toList();
    }

    private Map<String, YieldRecord> records() {
        Map<String, YieldRecord> records = new HashMap<>(into.yields());
        carried().forEach(preparation -> records.put(preparation.name(), from.yieldOf(preparation.name())));
        return records;
    }

    private static Allergens allergens(Allergens one, Allergens other) {
        Set<String> contains = union(one.contains(), other.contains());
        Set<String> mayContain = union(one.mayContain(), other.mayContain());
        mayContain.removeAll(contains);
        Map<String, String> named = new TreeMap<>(one.named());
        other.named().forEach((word, name) -> named.merge(word, name, MergedIngredient::both));
        Optional<BigDecimal> sulphites = Stream.of(one.sulphites(), other.sulphites())
                .flatMap(Optional::stream)
                .max(BigDecimal::compareTo);
        return new Allergens(contains, mayContain, one.known() && other.known(), named, sulphites);
    }

    private static String both(String one, String other) {
        return one.equalsIgnoreCase(other) ? one : one + ", " + other;
    }

    private static Diet diet(Diet one, Diet other) {
        Set<String> suits = new TreeSet<>(one.suits());
        suits.retainAll(other.suits());
        return new Diet(suits, union(one.unsuited(), other.unsuited()));
    }

    private static Set<String> union(Set<String> one, Set<String> other) {
        return Stream.concat(one.stream(), other.stream()).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Why the two cannot be one, as a sentence; empty when they can. */
    Optional<String> refusal() {
        Item survivor = result().item();
        Quantity one = Quantity.of(1, from.item().countIn());
        if (survivor.converter().convert(one, survivor.countIn()) instanceof Conversion.Missing missing) {
            return Optional.of(from.item().name() + " is counted in " + one.unit() + " and " + survivor.name() + " in "
                    + survivor.countIn() + ". " + missing.text() + " Write it on one of the two, then merge.");
        }
        return Optional.empty();
    }

    /** What changes in meaning, each as a sentence. */
    List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        Item other = from.item();
        Item survivor = result().item();
        for (Preparation preparation : other.preparations()) {
            Preparation kept = survivor.preparation(preparation.name()).orElseThrow();
            if (!kept.yield().equals(preparation.yield())) {
                remarks.add("“" + preparation.name() + "” is then reckoned with a yield of " + kept.yield()
                        + " instead of " + preparation.yield() + ".");
            }
        }
        addIf(
                remarks,
                carried().findAny().isPresent(),
                () -> "It takes over the preparations "
                        + carried().map(Preparation::name).collect(Collectors.joining("; ")) + ".");
        addIf(remarks, survivor.measures().size() > into.item().measures().size(), () -> "It takes over measures.");
        addIf(
                remarks,
                !survivor.allergens().equals(into.item().allergens()),
                () -> "Its allergens are then: " + survivor.allergens().inWords() + ".");
        addIf(
                remarks,
                other.writtenPrice().isPresent() && !survivor.writtenPrice().equals(other.writtenPrice()),
                () -> "The written price of " + other.name() + " goes.");
        return remarks;
    }

    private static void addIf(List<String> remarks, boolean so, java.util.function.Supplier<String> remark) {
        if (so) {
            remarks.add(remark.get());
        }
    }
}
