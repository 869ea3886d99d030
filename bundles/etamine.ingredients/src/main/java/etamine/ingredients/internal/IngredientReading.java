package etamine.ingredients.internal;

import etamine.ingredients.Ingredient;
import etamine.ingredients.YieldRecord;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Diet;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.Conversion;
import etamine.measures.Converter;
import etamine.measures.Dimension;
import etamine.measures.Equivalence;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads one entry of the section; what cannot be read is noted on the entry and left out. */
final class IngredientReading {
    private static final List<Dimension> COUNTED =
            List.of(Dimension.MASS, Dimension.VOLUME, Dimension.COUNT, Dimension.PORTION);

    private final EntryReader entry;

    private IngredientReading(EntryReader entry) {
        this.entry = entry;
    }

    static Ingredient of(EntryReader entry) {
        return new IngredientReading(entry).ingredient();
    }

    private Ingredient ingredient() {
        List<Equivalence> measures = measures(entry);
        Optional<UnitPrice> price = entry.price("price");
        Map<String, YieldRecord> records = new HashMap<>();
        List<Preparation> preparations = PreparationForm.read(entry, records);
        Item item = new Item(
                entry.needed("id"),
                entry.needed("name"),
                entry.text("group"),
                false,
                entry.text("storage"),
                entry.period("keeps"),
                countIn(measures, price),
                measures,
                preparations,
                allergens(),
                price,
                new Diet(entry.words("suits"), entry.words("unsuited")));
        Optional<String> mergedInto = Optional.of(entry.text("mergedInto")).filter(id -> !id.isEmpty());
        return new Ingredient(item, records, entry.text("note"), mergedInto);
    }

    private Allergens allergens() {
        return new Allergens(
                entry.words("contains"),
                entry.words("mayContain"),
                entry.flag("allergensKnown"),
                entry.names("allergenNames"),
                entry.decimal("sulphites"));
    }

    static List<Equivalence> measures(EntryReader owner) {
        List<Equivalence> measures = new ArrayList<>();
        for (EntryReader each : owner.each("measures")) {
            each.positive("of")
                    .ifPresent(of -> each.positive("is").ifPresent(is -> measures.add(new Equivalence(of, is))));
        }
        return measures;
    }

    /** A word of its own is resolved to what it measures, since stock is kept in sizes that can be summed. */
    private Unit countIn(List<Equivalence> measures, Optional<UnitPrice> price) {
        if (!entry.has("countIn")) {
            return price.map(known -> known.per().unit())
                    .filter(unit -> unit.dimension() != Dimension.WORD)
                    .orElse(Unit.KG);
        }
        String symbol = entry.text("countIn");
        Optional<Unit> unit = Unit.find(symbol);
        return unit.isPresent() ? unit.get() : resolved(symbol, measures);
    }

    private Unit resolved(String word, List<Equivalence> measures) {
        try {
            Quantity one = Quantity.of(1, Unit.word(word));
            for (Dimension dimension : COUNTED) {
                if (Converter.of(measures).convert(one, dimension) instanceof Conversion.Converted found) {
                    return found.quantity().unit();
                }
            }
            entry.trouble("countIn", "Add to measures what 1 " + word + " is, or count it in g, kg, ml, l or ea.");
        } catch (MeasureException notWord) {
            entry.trouble("countIn", notWord.getMessage());
        }
        return Unit.KG;
    }
}
