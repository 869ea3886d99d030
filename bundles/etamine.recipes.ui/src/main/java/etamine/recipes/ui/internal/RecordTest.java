package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.BatchTest;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Quantity;
import etamine.widgets.DayField;
import etamine.widgets.FormDialog;
import etamine.widgets.FormPane;
import etamine.widgets.QuantityField;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks what one making of a recipe took and gave on the scales. */
final class RecordTest {
    private final Shell parent;
    private final Recipe recipe;
    private final RecipesModel model;
    private final LocalDate today;
    private final List<QuantityField> out = new ArrayList<>();
    private Optional<BatchTest> answer = Optional.empty();

    /** The fields, once they are made. */
    private record Fields(DayField day, Text by, QuantityField in, Text note) {}

    private Optional<Fields> fields = Optional.empty();

    RecordTest(Shell parent, Recipe recipe, RecipesModel model, LocalDate today) {
        this.parent = parent;
        this.recipe = recipe;
        this.model = model;
        this.today = today;
    }

    Optional<BatchTest> ask() {
        new FormDialog(parent, "Record a test of " + recipe.name(), this::fill)
                .button("Record")
                .check(this::problem)
                .onAccept(() -> answer = test())
                .ask();
        return answer;
    }

    private void fill(FormPane form) {
        DayField day = form.day("Day", "field:test-day", () -> today);
        day.set(today);
        day.required();
        Text by = form.text("Weighed by", "field:test-by");
        QuantityField in = form.quantity("Went in, all together", "field:test-in");
        in.required();
        for (Make make : recipe.makes()) {
            out.add(form.quantity("Came out: " + model.shown(make.item()), "field:test-out-" + make.item()));
        }
        Text note = form.text("Note", "field:test-note");
        form.remark("Weigh what goes into the pot after trimming, and what comes out. What is missing was lost.");
        fields = Optional.of(new Fields(day, by, in, note));
    }

    private Optional<String> problem() {
        return out.stream().allMatch(field -> field.value().isEmpty())
                ? Optional.of("Write the weight of at least one thing that came out.")
                : Optional.empty();
    }

    private Optional<BatchTest> test() {
        List<BatchTest.Weighed> weighed = new ArrayList<>();
        for (int at = 0; at < out.size(); at++) {
            String item = recipe.makes().get(at).item();
            out.get(at).value().ifPresent(weight -> weighed.add(new BatchTest.Weighed(item, weight)));
        }
        return fields.flatMap(all -> all.in().value().map(in -> test(all, in, weighed)));
    }

    private BatchTest test(Fields all, Quantity in, List<BatchTest.Weighed> weighed) {
        return new BatchTest(
                all.day().value().orElse(today),
                all.by().getText().strip(),
                in,
                weighed,
                all.note().getText().strip(),
                false);
    }
}
