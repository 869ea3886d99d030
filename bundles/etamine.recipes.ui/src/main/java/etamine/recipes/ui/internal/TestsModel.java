package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.BatchTest;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.yield.Spread;
import etamine.recipes.MeasuredYield;
import etamine.recipes.Trials;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The tests of a recipe as rows, without widgets. */
final class TestsModel {
    private final Trials trials;
    private final RecipesModel model;

    TestsModel(Trials trials, RecipesModel model) {
        this.trials = trials;
        this.model = model;
    }

    Trials trials() {
        return trials;
    }

    List<TestRow> tests(Recipe recipe) {
        List<TestRow> rows = new ArrayList<>();
        for (BatchTest test : recipe.standing().tests()) {
            rows.add(new TestRow(
                    rows.size(),
                    test.date(),
                    test.by(),
                    model.text(test.in()),
                    test.out().stream().map(this::weighed).collect(Collectors.joining("; ")),
                    test.accepted(),
                    test.note()));
        }
        return rows;
    }

    private String weighed(BatchTest.Weighed out) {
        return model.shown(out.item()) + " " + model.text(out.quantity());
    }

    List<YieldRow> yields(Recipe recipe) {
        return trials.measured(recipe).stream().map(this::row).toList();
    }

    private YieldRow row(MeasuredYield measured) {
        Optional<Spread> spread = measured.measured();
        return new YieldRow(
                measured.item(),
                measured.name(),
                measured.written().map(Percent::of).orElse("?"),
                spread.map(Spread::mean).map(Percent::of).orElse(""),
                spread.map(TestsModel::spread).orElse(""),
                spread.map(each -> Integer.toString(each.n())).orElse("0"),
                measured.working().map(model::text).orElse(""));
    }

    /** The deviation with the range; one test has neither. */
    private static String spread(Spread spread) {
        return spread.deviation()
                .map(deviation -> "\u00b1 " + Percent.of(deviation) + ", " + Percent.of(spread.least()) + " to "
                        + Percent.of(spread.greatest()))
                .orElse("one test");
    }
}
