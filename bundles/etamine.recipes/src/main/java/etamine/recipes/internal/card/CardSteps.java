package etamine.recipes.internal.card;

import etamine.documents.Align;
import etamine.documents.Block;
import etamine.documents.Block.Column;
import etamine.kitchen.recipe.Step;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The steps of a card: only the columns that some step has something for. */
final class CardSteps {
    private CardSteps() {}

    static Block of(List<Step> steps) {
        Map<String, Integer> numbers = new HashMap<>();
        steps.forEach(step -> numbers.putIfAbsent(step.id(), numbers.size() + 1));
        List<Column> columns = new ArrayList<>();
        List<Function<Step, String>> cells = new ArrayList<>();
        columns.add(new Column("", 1, Align.RIGHT, false));
        cells.add(step -> String.valueOf(numbers.get(step.id())));
        columns.add(new Column("What to do", 14, false));
        cells.add(step -> text(step, numbers));
        column(steps, columns, cells, new Column("Hands on", 3, true), step -> time(step.hands()));
        column(steps, columns, cells, new Column("By itself", 3, true), step -> time(step.unattended()));
        column(steps, columns, cells, new Column("At", 3, true), Step::temperature);
        column(steps, columns, cells, new Column("With", 5, false), Step::equipment);
        column(steps, columns, cells, new Column("Holds", 3, true), step -> time(step.holds()));
        column(steps, columns, cells, new Column("Station", 4, false), Step::station);
        List<List<String>> rows = steps.stream()
                .map(step -> cells.stream().map(cell -> cell.apply(step)).toList())
                .toList();
        return new Block.Grid(columns, rows, List.of());
    }

    private static void column(
            List<Step> steps,
            List<Column> columns,
            List<Function<Step, String>> cells,
            Column column,
            Function<Step, String> cell) {
        if (steps.stream().anyMatch(step -> !cell.apply(step).isEmpty())) {
            columns.add(column);
            cells.add(cell);
        }
    }

    /** A step that waits for others than the one before it says for which. */
    private static String text(Step step, Map<String, Integer> numbers) {
        int own = numbers.get(step.id());
        List<String> others = step.after().stream()
                .filter(numbers::containsKey)
                .map(numbers::get)
                .filter(number -> number != own - 1 || step.after().size() > 1)
                .sorted()
                .map(String::valueOf)
                .toList();
        return others.isEmpty() ? step.text() : step.text() + " (after " + String.join(", ", others) + ")";
    }

    static String time(Duration time) {
        if (time.isZero()) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        if (time.toHours() > 0) {
            parts.add(time.toHours() + " h");
        }
        if (time.toMinutesPart() > 0) {
            parts.add(time.toMinutesPart() + " min");
        }
        if (time.toSecondsPart() > 0) {
            parts.add(time.toSecondsPart() + " s");
        }
        return String.join(" ", parts);
    }
}
