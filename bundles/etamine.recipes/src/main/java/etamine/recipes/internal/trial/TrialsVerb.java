package etamine.recipes.internal.trial;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.recipe.BatchTest;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.MeasureException;
import etamine.measures.QuantityText;
import etamine.recipes.Trials;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.text.CardText;
import etamine.recipes.internal.text.CardVerb;
import etamine.recipes.internal.text.ChangeReport;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Tries and weighed tests of a recipe on the console: {@code trials ID}. */
@Component
public final class TrialsVerb implements Verb {
    private final RecipeShelf shelf;
    private final Trials trials;
    private final TrialsText text;

    /** The tests of the recipes on that shelf. */
    @Activate
    public TrialsVerb(@Reference RecipeShelf shelf, @Reference Trials trials, @Reference CardText cards) {
        this.shelf = shelf;
        this.trials = trials;
        this.text = new TrialsText(trials, cards);
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("trials", "how far a recipe is to be trusted, and what its tests weighed", "ID")
                .with("--tried", "", "count one more making with the same result")
                .with("--in", "WEIGHT", "record a test: what went in, such as \"1.4 kg\"")
                .with("--out", "LIST", "what came out, such as \"fowl-breast=380 g,fowl-leg=400 g\"")
                .with("--date", "DATE", "the day of the test")
                .with("--by", "WHO", "who weighed")
                .with("--note", "TEXT", "what was special about it")
                .with("--accept", "WHICH", "make the mean of these tests the working yield: all, or such as 1,3")
                .with("--forget", "N", "take a test out again");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        Recipe recipe = CardVerb.recipe(shelf, call);
        long asked = Stream.of("--tried", "--in", "--accept", "--forget")
                .filter(call::has)
                .count();
        if (asked > 1) {
            throw VerbException.wrongCall("Do one thing at a time: --tried, --in with --out, --accept or --forget.");
        }
        if (call.has("--tried")) {
            return ChangeReport.of(trials.tried(recipe.id()), "Counted one more good try of " + recipe.name() + ".");
        }
        if (call.has("--in") || call.has("--out")) {
            return ChangeReport.of(trials.record(recipe.id(), test(call)), "Recorded a test of " + recipe.name() + ".");
        }
        if (call.has("--accept")) {
            return ChangeReport.of(
                    trials.accept(recipe.id(), chosen(call.option("--accept").orElseThrow())),
                    "The measured yield of " + recipe.name() + " is its working yield now.");
        }
        if (call.has("--forget")) {
            int test = number(call.option("--forget").orElseThrow());
            return ChangeReport.of(trials.forget(recipe.id(), test - 1), "Took the test out of " + recipe.name() + ".");
        }
        return text.report(recipe);
    }

    private static List<Integer> chosen(String which) throws VerbException {
        if (which.equals("all")) {
            return List.of();
        }
        List<Integer> chosen = new ArrayList<>();
        for (String part : which.split(",")) {
            chosen.add(number(part.strip()) - 1);
        }
        return chosen;
    }

    private static int number(String text) throws VerbException {
        if (!text.matches("[0-9]{1,6}")) {
            throw VerbException.wrongCall("Name tests by their numbers, such as 1 or 1,3; trials ID lists them.");
        }
        return Integer.parseInt(text);
    }

    private BatchTest test(VerbCall call) throws VerbException {
        if (!call.has("--in") || !call.has("--out")) {
            throw VerbException.wrongCall("Write both what went in and what came out: --in WEIGHT --out LIST.");
        }
        try {
            List<BatchTest.Weighed> out = new ArrayList<>();
            for (String part : call.option("--out").orElseThrow().split("[,;](?=[^,;=]+=)")) {
                out.add(weighed(part));
            }
            return new BatchTest(
                    date(call),
                    call.option("--by").orElse(""),
                    QuantityText.parse(call.option("--in").orElseThrow()),
                    out,
                    call.option("--note").orElse(""),
                    false);
        } catch (MeasureException unreadable) {
            throw VerbException.wrongCall(unreadable.getMessage());
        }
    }

    private static BatchTest.Weighed weighed(String part) {
        int sign = part.indexOf('=');
        if (sign < 0) {
            throw new MeasureException("Write what came out as item=weight, such as fowl-breast=380 g.");
        }
        return new BatchTest.Weighed(
                part.substring(0, sign).strip(),
                QuantityText.parse(part.substring(sign + 1).strip()));
    }

    private LocalDate date(VerbCall call) throws VerbException {
        try {
            return call.option("--date").map(LocalDate::parse).orElseGet(text::today);
        } catch (DateTimeException unreadable) {
            throw VerbException.wrongCall("Write the day as year-month-day, such as 2026-11-27.");
        }
    }
}
