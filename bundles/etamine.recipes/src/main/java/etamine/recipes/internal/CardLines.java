package etamine.recipes.internal;

import etamine.documents.Align;
import etamine.documents.Block;
import etamine.documents.Block.Column;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.recipes.Practical;
import etamine.recipes.Scaling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The lines of a card: what a cook measures, and beside it the exact amount and what has to be bought for it. */
final class CardLines {
    private final Scaling scaling;
    private final ItemView items;

    CardLines(Scaling scaling, ItemView items) {
        this.scaling = scaling;
        this.items = items;
    }

    Block uses(Recipe recipe) {
        List<Column> columns = new ArrayList<>();
        columns.add(new Column("Measure", 4, true));
        columns.add(new Column("Item", 9, false));
        columns.add(new Column("Prepared", 7, false));
        columns.add(new Column("Basis", 2, Align.CENTRE, false));
        columns.add(new Column("Exact", 4, true));
        columns.add(new Column("As purchased", 4, true));
        List<List<String>> rows = recipe.uses().stream().map(this::row).toList();
        return new Block.Grid(columns, rows, List.of());
    }

    private List<String> row(Use use) {
        Practical amount = scaling.practical(use.quantity());
        return List.of(
                amount.text(),
                named(use),
                use.as().orElse(""),
                use.basis().name(),
                amount.isExact() ? "" : QuantityText.formatExact(use.quantity()),
                purchased(use));
    }

    private String named(Use use) {
        List<String> names = new ArrayList<>();
        names.add(items.name(use.item()));
        use.substitutes().forEach(item -> names.add("or " + items.name(item)));
        return String.join(" ", names);
    }

    /** What trimming makes of a line; empty where nothing is trimmed. */
    private String purchased(Use use) {
        Optional<Item> item = items.find(use.item());
        if (use.basis() == Basis.AP || item.isEmpty()) {
            return "";
        }
        Conversion bought = use.asPurchased(item.get());
        return bought instanceof Conversion.Converted converted
                ? scaling.practical(tidy(converted.quantity(), use.quantity())).text()
                : "not known";
    }

    /** In the unit of the line where that measures the same, since a card is read across. */
    private static Quantity tidy(Quantity bought, Quantity line) {
        return bought.unit().dimension() == line.unit().dimension()
                        && bought.unit().system() != line.unit().system()
                ? bought.in(line.unit())
                : bought;
    }

    /** What comes out, where that is more than one thing. */
    Optional<Block> makes(Recipe recipe) {
        if (recipe.makes().size() < 2) {
            return Optional.empty();
        }
        List<List<String>> rows = recipe.makes().stream().map(this::row).toList();
        return Optional.of(new Block.Together(List.of(
                new Block.Heading("What comes out"),
                new Block.Grid(
                        List.of(
                                new Column("Measure", 3, true),
                                new Column("Item", 8, false),
                                new Column("Exact", 3, true)),
                        rows,
                        List.of()))));
    }

    private List<String> row(Make make) {
        Practical amount = scaling.practical(make.quantity());
        return List.of(
                amount.text(),
                items.name(make.item()),
                amount.isExact() ? "" : QuantityText.formatExact(make.quantity()));
    }

    String measured(Quantity quantity) {
        Practical amount = scaling.practical(quantity);
        return amount.isExact()
                ? amount.text()
                : amount.text() + " (" + QuantityText.formatExact(quantity) + " exactly)";
    }
}
