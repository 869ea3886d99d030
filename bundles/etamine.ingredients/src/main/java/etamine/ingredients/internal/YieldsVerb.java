package etamine.ingredients.internal;

import etamine.base.Problem;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.ingredients.Change;
import etamine.ingredients.Ingredient;
import etamine.ingredients.IngredientList;
import etamine.ingredients.YieldRecord;
import etamine.ingredients.YieldTest;
import etamine.kitchen.house.Kitchen;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Lists, records and accepts yield tests of a preparation: {@code yields ITEM [PREPARATION]}. */
@Component
public final class YieldsVerb implements Verb {
    private final IngredientList list;
    private final Kitchen kitchen;

    /** Works on that list by the house's day. */
    @Activate
    public YieldsVerb(@Reference IngredientList list, @Reference Kitchen kitchen) {
        this.list = list;
        this.kitchen = kitchen;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of(
                        "yields",
                        "list the yield tests of an ingredient, record one, accept a yield",
                        "ITEM",
                        "[PREPARATION...]")
                .with("--in", "QUANTITY", "record a test: what went in, such as \"1 kg\"")
                .with("--out", "QUANTITY", "what came out usable")
                .with("--kind", "KIND", "trim (without it) or cooking")
                .with("--date", "DATE", "the day of the test; today without it")
                .with("--by", "NAME", "who weighed or accepts")
                .with("--note", "TEXT", "what was special about it")
                .with("--accept", "TESTS", "make it the working yield: mean, or numbers of tests such as 1,3");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        Ingredient ingredient = find(call.arguments().get(0));
        String preparation = call.arguments().stream().skip(1).collect(Collectors.joining(" "));
        boolean records = call.has("--in") || call.has("--out");
        if (records || call.has("--accept")) {
            refuseUnknown(ingredient, preparation);
        }
        try {
            if (records) {
                ingredient = save(recorded(ingredient, preparation, call));
            }
            if (call.has("--accept")) {
                ingredient = save(accepted(ingredient, preparation, call));
            }
        } catch (MeasureException unclear) {
            throw VerbException.rejected(unclear.getMessage());
        }
        return YieldReport.of(ingredient, preparation);
    }

    private Ingredient find(String id) throws VerbException {
        return list.find(id)
                .orElseThrow(() ->
                        VerbException.wrongCall("There is no ingredient “" + id + "”; look for its id with items."));
    }

    private static void refuseUnknown(Ingredient ingredient, String preparation) throws VerbException {
        if (ingredient.item().preparation(preparation).isEmpty()) {
            String known = ingredient.item().preparations().stream()
                    .map(each -> "“" + each.name() + "”")
                    .collect(Collectors.joining(", "));
            throw VerbException.wrongCall("Name one of its preparations after the ingredient: "
                    + (known.isEmpty() ? "it has none yet; add one first." : known + "."));
        }
    }

    private Ingredient recorded(Ingredient ingredient, String preparation, VerbCall call) throws VerbException {
        YieldTest test = new YieldTest(
                date(call),
                call.option("--by").orElse(""),
                kind(call),
                weight(call, "--in"),
                weight(call, "--out"),
                call.option("--note").orElse(""),
                false);
        YieldRecord record = ingredient.yieldOf(preparation);
        List<YieldTest> tests =
                Stream.concat(record.tests().stream(), Stream.of(test)).toList();
        return ingredient.withYield(preparation, record.withTests(tests));
    }

    private LocalDate date(VerbCall call) throws VerbException {
        String text = call.option("--date").orElse("");
        try {
            return text.isEmpty() ? kitchen.today() : LocalDate.parse(text);
        } catch (DateTimeException unreadable) {
            throw VerbException.wrongCall("“" + text + "” is not a day; write one such as 2026-11-27.");
        }
    }

    private static YieldTest.Kind kind(VerbCall call) throws VerbException {
        String text = call.option("--kind").orElse("trim");
        return Stream.of(YieldTest.Kind.values())
                .filter(kind -> kind.name().equalsIgnoreCase(text))
                .findFirst()
                .orElseThrow(() -> VerbException.wrongCall("Write --kind trim or --kind cooking, not " + text + "."));
    }

    private static Quantity weight(VerbCall call, String option) throws VerbException {
        Quantity quantity = Quantity.parse(call.option(option)
                .orElseThrow(
                        () -> VerbException.wrongCall("Give both --in and --out, such as \"1 kg\" and \"800 g\".")));
        if (quantity.signum() <= 0) {
            throw VerbException.rejected("Write more than zero for " + option + " instead of " + quantity + ".");
        }
        return quantity;
    }

    private Ingredient accepted(Ingredient ingredient, String preparation, VerbCall call) throws VerbException {
        String chosen = call.option("--accept").orElse("").strip().toLowerCase(Locale.ROOT);
        int there = ingredient.yieldOf(preparation).tests().size();
        List<Integer> tests;
        if (chosen.equals("mean")) {
            tests = IntStream.range(0, there).boxed().toList();
        } else if (chosen.matches("[0-9]{1,4}(,[0-9]{1,4})*")) {
            tests = Stream.of(chosen.split(","))
                    .map(number -> Integer.parseInt(number) - 1)
                    .toList();
        } else {
            throw VerbException.wrongCall("Write --accept mean, or numbers of tests such as --accept 1,3.");
        }
        return ingredient.accepting(
                preparation, tests, kitchen.today(), call.option("--by").orElse(""));
    }

    private Ingredient save(Ingredient ingredient) throws VerbException {
        if (list.save(ingredient, list.revision(ingredient.id())) instanceof Change.Refused refused) {
            throw VerbException.rejected(
                    refused.problems().stream().map(Problem::text).collect(Collectors.joining(" ")));
        }
        return ingredient;
    }
}
