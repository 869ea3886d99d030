package etamine.recipes.ui.internal;

import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.recipe.Use;
import etamine.measures.Money;
import etamine.recipes.UseLines;
import etamine.widgets.EntryLines;
import java.util.List;
import java.util.Optional;

/** The lines of a sheet as the form shows them. */
final class LineText {
    private final RecipesModel model;
    private final UseLines lines;

    LineText(RecipesModel model, UseLines lines) {
        this.model = model;
        this.lines = lines;
    }

    EntryLines.Line of(LineSheet.Entry entry, Optional<Integer> place, Optional<RecipeCost> cost) {
        if (entry instanceof LineSheet.Entry.Clear clear) {
            Use use = clear.use();
            return new EntryLines.Line(
                    lines.write(use),
                    use.basis().name(),
                    List.of(
                            model.asPurchased(use),
                            place.map(at -> cost(use, at, cost)).orElse("")),
                    model.unweighed(use)
                            .map(missing ->
                                    new EntryLines.Trouble(missing.sentence(), List.of(), missing.offer(), 0, 0)));
        }
        LineSheet.Entry.Unclear unclear = (LineSheet.Entry.Unclear) entry;
        return new EntryLines.Line(
                unclear.text(),
                "",
                List.of(),
                Optional.of(trouble(unclear)).filter(each -> !each.sentence().isEmpty()));
    }

    private static String cost(Use use, int place, Optional<RecipeCost> cost) {
        return cost.filter(known -> place < known.lines().size())
                .map(known -> known.lines().get(place))
                .filter(line -> line.item().equals(use.item()))
                .flatMap(RecipeCost.Line::cost)
                .map(Money::rounded)
                .map(Money::toString)
                .orElse("");
    }

    private EntryLines.Trouble trouble(LineSheet.Entry.Unclear unclear) {
        Optional<UseLines.Span> unknown = unclear.reading().spans().stream()
                .filter(span -> span.part() == UseLines.Part.UNKNOWN)
                .findFirst();
        return new EntryLines.Trouble(
                unclear.reading().text(),
                unclear.reading().suggestions(),
                Missing.of(unclear.text(), unclear.reading(), model.words())
                        .map(Missing::offer)
                        .orElse(""),
                unknown.map(UseLines.Span::from).orElse(0),
                unknown.map(UseLines.Span::to).orElse(0));
    }
}
