package etamine.recipes.internal.card;

import etamine.documents.Align;
import etamine.documents.Block;
import etamine.documents.Block.Column;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.Practical;
import etamine.recipes.Scaling;
import etamine.recipes.internal.ItemView;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The lines of a card: what a cook measures, and beside it the exact amount and what has to be bought for it. */
final class CardLines {
    private static final Column MEASURE = new Column("Measure", 5, true);
    private static final Column EXACT = new Column("Exact", 4, true);
    private static final Column ITEM = new Column("Item", 10, false);
    private static final int DECIMALS = 3;

    private final Scaling scaling;
    private final ItemView items;

    CardLines(Scaling scaling, ItemView items) {
        this.scaling = scaling;
        this.items = items;
    }

    /** What goes in. */
    Block uses(Recipe recipe) {
        Rows rows = new Rows(recipe.uses());
        rows.always(MEASURE, this::measured);
        return rest(rows);
    }

    /** What is on a plate, with the amount of one plate beside that of all. */
    Block plate(Recipe recipe, Ratio plates) {
        Ratio share = Ratio.ONE.dividedBy(plates);
        Rows rows = new Rows(recipe.uses());
        rows.always(
                new Column("One plate", 5, true),
                use -> measured(use.withQuantity(use.quantity().times(share))));
        rows.always(new Column("In all", 5, true), this::measured);
        return rest(rows);
    }

    private Block rest(Rows rows) {
        rows.always(ITEM, this::named);
        rows.wherePresent(new Column("Prepared", 7, false), use -> use.as().orElse(""));
        rows.wherePresent(new Column("Basis", 2, Align.CENTRE, false), this::basis);
        rows.wherePresent(EXACT, use -> exact(use.quantity()));
        rows.wherePresent(new Column("As purchased", 4, true), this::purchased);
        return rows.grid();
    }

    /** Columns over the same lines; those that no line has anything for are left out. */
    private record Rows(List<Use> uses, List<Column> columns, List<Function<Use, String>> cells) {
        Rows(List<Use> uses) {
            this(uses, new ArrayList<>(), new ArrayList<>());
        }

        void always(Column column, Function<Use, String> cell) {
            columns.add(column);
            cells.add(cell);
        }

        void wherePresent(Column column, Function<Use, String> cell) {
            if (uses.stream().anyMatch(use -> !cell.apply(use).isEmpty())) {
                always(column, cell);
            }
        }

        Block grid() {
            List<List<String>> rows = uses.stream()
                    .map(use -> cells.stream().map(cell -> cell.apply(use)).toList())
                    .toList();
            return new Block.Grid(columns, rows, List.of());
        }
    }

    /** What a cook measures; of portions, also what they weigh. */
    private String measured(Use use) {
        String amount = text(use.quantity());
        return use.quantity().unit().dimension() == Dimension.PORTION
                ? portionsOf(use).map(size -> amount + ", " + size).orElse(amount)
                : amount;
    }

    private Optional<String> portionsOf(Use use) {
        Optional<Item> item = items.find(use.item());
        for (Dimension dimension : List.of(Dimension.MASS, Dimension.VOLUME)) {
            Optional<Conversion> size = item.map(each -> each.converter().convert(use.quantity(), dimension));
            if (size.isPresent() && size.get() instanceof Conversion.Converted converted) {
                return Optional.of(text(converted.quantity()));
            }
        }
        return Optional.empty();
    }

    private String named(Use use) {
        List<String> names = new ArrayList<>();
        names.add(items.name(use.item()));
        use.substitutes().forEach(item -> names.add("or " + items.name(item)));
        return String.join(" ", names);
    }

    /** What is made in the kitchen is used as it is, so that nothing is said of it. */
    private String basis(Use use) {
        boolean made = items.find(use.item()).filter(Item::made).isPresent();
        return made && use.basis() == Basis.AP ? "" : use.basis().name();
    }

    /** What trimming makes of a line; empty where nothing is trimmed. */
    private String purchased(Use use) {
        Optional<Item> item = items.find(use.item());
        if (use.basis() == Basis.AP || item.isEmpty()) {
            return "";
        }
        return use.asPurchased(item.get()) instanceof Conversion.Converted converted
                ? text(converted.quantity())
                : "not known";
    }

    /** The amount itself where measuring it in the kitchen's steps changes it; long fractions as decimals. */
    private String exact(Quantity quantity) {
        if (scaling.practical(quantity).isExact()) {
            return "";
        }
        String whole = QuantityText.formatExact(quantity);
        boolean readable = !whole.contains("/") || whole.matches(".*\\b[1-9]/[1-9]\\b.*|.*\\b1[0-5]?/16\\b.*");
        return readable
                ? whole
                : quantity.amount()
                                .toDecimal(DECIMALS, RoundingMode.HALF_UP)
                                .stripTrailingZeros()
                                .toPlainString()
                        + " " + quantity.unit();
    }

    /** What comes out, where that is more than one thing. */
    Optional<Block> makes(Recipe recipe) {
        if (recipe.makes().size() < 2) {
            return Optional.empty();
        }
        List<List<String>> rows = recipe.makes().stream().map(this::row).toList();
        boolean exact = rows.stream().anyMatch(row -> !row.get(2).isEmpty());
        Block grid = exact
                ? new Block.Grid(List.of(MEASURE, ITEM, EXACT), rows, List.of())
                : new Block.Grid(
                        List.of(MEASURE, ITEM),
                        rows.stream().map(row -> row.subList(0, 2)).toList(),
                        List.of());
        return Optional.of(new Block.Together(List.of(new Block.Heading("What comes out"), grid)));
    }

    private List<String> row(Make make) {
        return List.of(scaling.practical(make.quantity()).text(), items.name(make.item()), exact(make.quantity()));
    }

    /** An amount by itself. */
    String measured(Quantity quantity) {
        String exact = exact(quantity);
        return exact.isEmpty() ? text(quantity) : text(quantity) + " (exactly " + exact + ")";
    }

    private String text(Quantity quantity) {
        Practical amount = scaling.practical(quantity);
        boolean several = amount.measured().unit().equals(Unit.PORTION)
                && amount.measured().compareTo(Quantity.of(1, Unit.PORTION)) > 0;
        return several ? amount.text() + "s" : amount.text();
    }
}
