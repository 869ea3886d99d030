package etamine.ingredients.internal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.ingredients.Ingredient;
import etamine.ingredients.YieldChange;
import etamine.ingredients.YieldRecord;
import etamine.ingredients.YieldTest;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.item.Preparation;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The preparations of an ingredient in its entry, with where their yields come from. */
final class PreparationForm {
    private PreparationForm() {}

    static ArrayNode of(Ingredient ingredient) {
        ArrayNode list = EntryJson.empty().arrayNode();
        for (Preparation preparation : ingredient.item().preparations()) {
            YieldRecord record = ingredient.yieldOf(preparation.name());
            ObjectNode form = list.addObject()
                    .put("name", preparation.name())
                    .put("yield", preparation.yield().toString());
            EntryJson.put(form, "measures", IngredientForm.measures(preparation.measures()));
            EntryJson.put(form, "note", record.note());
            EntryJson.put(form, "tests", tests(record.tests()));
            EntryJson.put(form, "history", history(record.history()));
        }
        return list;
    }

    private static ArrayNode tests(List<YieldTest> tests) {
        ArrayNode list = EntryJson.empty().arrayNode();
        for (YieldTest test : tests) {
            ObjectNode form = list.addObject().put("date", test.date().toString());
            EntryJson.put(form, "by", test.by());
            form.put("kind", test.kind().name().toLowerCase(Locale.ROOT))
                    .put("in", test.in().toString())
                    .put("out", test.out().toString());
            EntryJson.put(form, "note", test.note());
            if (test.accepted()) {
                form.put("accepted", true);
            }
        }
        return list;
    }

    private static ArrayNode history(List<YieldChange> history) {
        ArrayNode list = EntryJson.empty().arrayNode();
        for (YieldChange change : history) {
            ObjectNode form = list.addObject().put("date", change.date().toString());
            EntryJson.put(form, "by", change.by());
            form.put("yield", change.yield().toString());
            EntryJson.put(form, "source", change.source());
        }
        return list;
    }

    /** Reads the preparations; what was recorded of their yields goes to {@code records}. */
    static List<Preparation> read(EntryReader entry, Map<String, YieldRecord> records) {
        List<Preparation> preparations = new ArrayList<>();
        for (EntryReader each : entry.each("preparations")) {
            String name = each.needed("name");
            Ratio yield = each.ratio("yield").orElse(Ratio.ONE);
            if (yield.signum() <= 0) {
                each.trouble("yield", "Write the share that is left after trimming, more than 0, such as 0.74.");
            } else if (!name.isEmpty()
                    && preparations.stream().anyMatch(other -> other.name().equals(name))) {
                each.trouble("name", "“" + name + "” is there twice; give each preparation a name of its own.");
            } else if (!name.isEmpty()) {
                preparations.add(new Preparation(name, yield, IngredientReading.measures(each)));
                records.put(name, new YieldRecord(each.text("note"), readTests(each), readHistory(each)));
            }
        }
        return preparations;
    }

    private static List<YieldTest> readTests(EntryReader preparation) {
        List<YieldTest> tests = new ArrayList<>();
        for (EntryReader each : preparation.each("tests")) {
            Optional<LocalDate> date = date(each);
            YieldTest.Kind kind = each.choice("kind", YieldTest.Kind.class).orElse(YieldTest.Kind.TRIM);
            Optional<Quantity> in = each.positive("in");
            Optional<Quantity> out = each.positive("out");
            if (date.isPresent() && in.isPresent() && out.isPresent() && weighed(each, in.get(), out.get())) {
                tests.add(new YieldTest(
                        date.get(),
                        each.text("by"),
                        kind,
                        in.get(),
                        out.get(),
                        each.text("note"),
                        each.flag("accepted")));
            }
        }
        return tests;
    }

    private static boolean weighed(EntryReader test, Quantity in, Quantity out) {
        boolean known = in.unit().dimension() != Dimension.WORD;
        if (!known || !in.unit().isLike(out.unit())) {
            test.trouble("out", "Write what came out in a unit like that of what went in, such as 1 kg and 800 g.");
            return false;
        }
        return true;
    }

    private static List<YieldChange> readHistory(EntryReader preparation) {
        List<YieldChange> history = new ArrayList<>();
        for (EntryReader each : preparation.each("history")) {
            Optional<Ratio> yield = each.ratio("yield");
            date(each)
                    .ifPresent(date -> yield.ifPresent(
                            share -> history.add(new YieldChange(date, each.text("by"), share, each.text("source")))));
        }
        return history;
    }

    private static Optional<LocalDate> date(EntryReader part) {
        if (!part.has("date")) {
            part.trouble("date", "Write the day, such as 2026-11-27.");
        }
        return part.date("date");
    }
}
