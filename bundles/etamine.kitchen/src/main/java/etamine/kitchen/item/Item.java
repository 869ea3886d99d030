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

    /** The same with other allergens. */
    public Item withAllergens(Allergens changed) {
        return new Item(
                id, name, group, made, storage, keeps, countIn, measures, preparations, changed, writtenPrice, diet);
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
