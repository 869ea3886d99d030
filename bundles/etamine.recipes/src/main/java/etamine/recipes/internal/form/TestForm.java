package etamine.recipes.internal.form;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.recipe.BatchTest;
import etamine.kitchen.recipe.Standing;
import etamine.measures.Quantity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far a recipe is to be trusted, in the exchange form: {@code tested}, {@code archived}, {@code tests}. */
final class TestForm {
    private TestForm() {}

    static void put(ObjectNode form, Standing standing) {
        if (standing.tested() > 0) {
            form.put("tested", standing.tested());
        }
        if (standing.archived()) {
            form.put("archived", true);
        }
        if (!standing.tests().isEmpty()) {
            ArrayNode list = form.putArray("tests");
            standing.tests().forEach(test -> put(list.addObject(), test));
        }
    }

    private static void put(ObjectNode form, BatchTest test) {
        form.put("date", test.date().toString());
        RecipeForm.putText(form, "by", test.by());
        form.put("in", test.in().toString());
        ArrayNode out = form.putArray("out");
        test.out()
                .forEach(weighed -> out.addObject()
                        .put("item", weighed.item())
                        .put("quantity", weighed.quantity().toString()));
        RecipeForm.putText(form, "note", test.note());
        if (test.accepted()) {
            form.put("accepted", true);
        }
    }

    static Standing read(EntryReader entry) {
        List<BatchTest> tests = new ArrayList<>();
        entry.each("tests").forEach(test -> read(test, tests));
        return new Standing(entry.whole("tested", 0), entry.flag("archived"), tests);
    }

    private static void read(EntryReader test, List<BatchTest> tests) {
        Optional<LocalDate> date = test.date("date");
        Optional<Quantity> in = test.positive("in");
        List<BatchTest.Weighed> out = new ArrayList<>();
        for (EntryReader weighed : test.each("out")) {
            String item = weighed.needed("item");
            weighed.positive("quantity").ifPresent(quantity -> out.add(new BatchTest.Weighed(item, quantity)));
        }
        if (!test.has("date")) {
            test.trouble("date", "Write the day of the test, such as 2026-11-27.");
        }
        if (date.isPresent() && in.isPresent()) {
            tests.add(new BatchTest(
                    date.get(), test.text("by"), in.get(), out, test.text("note"), test.flag("accepted")));
        }
    }
}
