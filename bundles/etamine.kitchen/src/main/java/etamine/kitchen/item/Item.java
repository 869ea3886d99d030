package etamine.kitchen.item;

import etamine.measures.Converter;
import etamine.measures.Dimension;
import etamine.measures.Equivalence;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Anything that can lie on a shelf.
 *
 * @param id its identifier
 * @param name what people call it
 * @param group a heading to list it under; empty when none
 * @param made whether a recipe makes it rather than a supplier delivering it
 * @param storage where it is kept, such as {@code chilled}; empty when not said
 * @param keeps how long it keeps in that storage; a kitchen's own figure, never a safety limit
 * @param countIn the unit it is counted in; its dimension is the one its stock is kept in
 * @param measures equivalences of the item itself
 * @param preparations ways of preparing it, with their yields
 * @param allergens what is known of its allergens
 * @param writtenPrice a price somebody wrote on it
 * @param diet which ways of eating it fits
 */
public record Item(
        String id,
        String name,
        String group,
        boolean made,
        String storage,
        Optional<Period> keeps,
        Unit countIn,
        List<Equivalence> measures,
        List<Preparation> preparations,
        Allergens allergens,
        Optional<UnitPrice> writtenPrice,
        Diet diet) {

    /** Copies the lists. */
    public Item {
        measures = List.copyOf(measures);
        preparations = List.copyOf(preparations);
    }

    /** An item of which no way of eating is known to fit. */
    public Item(
            String id,
            String name,
            String group,
            boolean made,
            String storage,
            Optional<Period> keeps,
            Unit countIn,
            List<Equivalence> measures,
            List<Preparation> preparations,
            Allergens allergens,
            Optional<UnitPrice> writtenPrice) {
        this(
                id,
                name,
                group,
                made,
                storage,
                keeps,
                countIn,
                measures,
                preparations,
                allergens,
                writtenPrice,
                Diet.UNKNOWN);
    }

    /** The same under another name. */
    public Item withName(String changed) {
        return labelled(changed, group, storage, keeps, countIn);
    }

    /** The same under another heading. */
    public Item withGroup(String changed) {
        return labelled(name, changed, storage, keeps, countIn);
    }

    /** The same kept elsewhere. */
    public Item withStorage(String changed) {
        return labelled(name, group, changed, keeps, countIn);
    }

    /** The same with another keeping time. */
    public Item withKeeps(Optional<Period> changed) {
        return labelled(name, group, storage, changed, countIn);
    }

    /** The same counted in another unit. */
    public Item withCountIn(Unit changed) {
        return labelled(name, group, storage, keeps, changed);
    }

    /** The same with other measures of its own. */
    public Item withMeasures(List<Equivalence> changed) {
        return measured(changed, preparations, allergens, writtenPrice, diet);
    }

    /** The same with other preparations. */
    public Item withPreparations(List<Preparation> changed) {
        return measured(measures, changed, allergens, writtenPrice, diet);
    }

    /** The same with other allergens. */
    public Item withAllergens(Allergens changed) {
        return measured(measures, preparations, changed, writtenPrice, diet);
    }

    /** The same with another written price. */
    public Item withPrice(Optional<UnitPrice> changed) {
        return measured(measures, preparations, allergens, changed, diet);
    }

    /** The same with other ways of eating it. */
    public Item withDiet(Diet changed) {
        return measured(measures, preparations, allergens, writtenPrice, changed);
    }

    private Item labelled(String name, String group, String storage, Optional<Period> keeps, Unit countIn) {
        return new Item(
                id, name, group, made, storage, keeps, countIn, measures, preparations, allergens, writtenPrice, diet);
    }

    private Item measured(
            List<Equivalence> measures,
            List<Preparation> preparations,
            Allergens allergens,
            Optional<UnitPrice> writtenPrice,
            Diet diet) {
        return new Item(
                id, name, group, made, storage, keeps, countIn, measures, preparations, allergens, writtenPrice, diet);
    }

    /** What an ingredient and a contributed item of the same id are together: its own facts, more measures. */
    public Item joinedBy(Item contributed) {
        List<Equivalence> all = new ArrayList<>(measures);
        contributed.measures().stream()
                .filter(measure -> !all.contains(measure))
                .forEach(all::add);
        return new Item(
                id,
                name,
                group,
                made || contributed.made(),
                storage,
                keeps,
                countIn,
                all,
                preparations,
                allergens,
                writtenPrice,
                diet);
    }

    /** The preparation of that name. */
    public Optional<Preparation> preparation(String preparationName) {
        return preparations.stream()
                .filter(p -> p.name().equals(preparationName))
                .findFirst();
    }

    /** Converts quantities of this item as it is. */
    public Converter converter() {
        return Converter.of(measures);
    }

    /** Converts quantities of this item prepared that way; an unknown preparation converts like the item. */
    public Converter converter(String preparationName) {
        return preparation(preparationName)
                .map(preparation -> Converter.of(preparation.measures(), measures))
                .orElseGet(this::converter);
    }

    /** The dimension its stock is kept in. */
    public Dimension dimension() {
        return countIn.dimension();
    }
}
