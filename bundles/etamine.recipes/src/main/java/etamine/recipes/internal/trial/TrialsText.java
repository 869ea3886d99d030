package etamine.recipes.internal.trial;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.kitchen.recipe.BatchTest;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.yield.Spread;
import etamine.measures.Ratio;
import etamine.recipes.MeasuredYield;
import etamine.recipes.Trials;
import etamine.recipes.Trust;
import etamine.recipes.internal.form.RecipeForm;
import etamine.recipes.internal.text.CardText;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The tests of a recipe for the console.
 *
 * @param trials knows them
 * @param cards names items and amounts
 */
record TrialsText(Trials trials, CardText cards) {

    LocalDate today() {
        return cards.today();
    }

    Report report(Recipe recipe) {
        Trust trust = trials.trust(recipe);
        List<MeasuredYield> yields = trials.measured(recipe);
        List<String> lines = new ArrayList<>();
        lines.add(recipe.name() + ": " + RecipeForm.word(trust.level()) + ", good tries " + trust.tries());
        trust.missing().forEach(missing -> lines.add("  " + missing));
        lines.addAll(tests(recipe));
        lines.addAll(yields(yields));
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", recipe.id());
        json.put("level", RecipeForm.word(trust.level()));
        json.put("tries", trust.tries());
        json.put("missing", trust.missing());
        json.put("tests", RecipeForm.plain(recipe).get("tests") instanceof List<?> tests ? tests : List.of());
        json.put("yields", yields.stream().map(TrialsText::json).toList());
        return Report.done(json, lines);
    }

    private List<String> tests(Recipe recipe) {
        TextTable table = new TextTable(">", "day", "by", ">in", "out", "", "note");
        List<BatchTest> tests = recipe.standing().tests();
        for (int i = 0; i < tests.size(); i++) {
            BatchTest test = tests.get(i);
            String out = test.out().stream()
                    .map(weighed -> cards.quantity(weighed.quantity()) + " "
                            + cards.lines().name(weighed.item()))
                    .collect(Collectors.joining(", "));
            table.row(
                    Integer.toString(i + 1),
                    test.date().toString(),
                    test.by(),
                    cards.quantity(test.in()),
                    out,
                    test.accepted() ? "accepted" : "",
                    test.note());
        }
        return table.lines();
    }

    private List<String> yields(List<MeasuredYield> yields) {
        TextTable table = new TextTable("gives", ">written", ">mean", ">spread", ">tests", ">a batch would give");
        for (MeasuredYield each : yields) {
            table.row(
                    each.name(),
                    each.written().map(TrialsText::percent).orElse("?"),
                    each.measured().map(Spread::mean).map(TrialsText::percent).orElse(""),
                    each.measured()
                            .flatMap(Spread::deviation)
                            .map(TrialsText::percent)
                            .orElse(""),
                    each.measured().map(Spread::n).map(String::valueOf).orElse("0"),
                    each.working().map(cards::quantity).orElse(""));
        }
        return table.lines();
    }

    private static Map<String, Object> json(MeasuredYield each) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("item", each.item());
        each.written().ifPresent(share -> json.put("writtenPercent", plain(share)));
        each.measured().ifPresent(spread -> {
            json.put("tests", spread.n());
            json.put("meanPercent", plain(spread.mean()));
            json.put("leastPercent", plain(spread.least()));
            json.put("greatestPercent", plain(spread.greatest()));
            spread.deviation().ifPresent(deviation -> json.put("deviationPercent", plain(deviation)));
        });
        each.working().ifPresent(quantity -> json.put("working", quantity.toString()));
        return json;
    }

    private static String percent(Ratio share) {
        return plain(share) + " %";
    }

    private static String plain(Ratio share) {
        return share.times(Ratio.of(100)).toDecimal(1, RoundingMode.HALF_UP).toPlainString();
    }
}
