package etamine.recipes.internal.card;

import etamine.documents.Block;
import etamine.documents.Block.Column;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.allergen.Group;
import etamine.kitchen.item.Allergens;
import etamine.recipes.AllergenSheet;
import etamine.recipes.AllergenState;
import etamine.recipes.Rolled;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Plates against the groups of a list. Every state has a mark of its own shape. */
final class AllergenMatrix {
    private final DeclarationList list;
    private final List<Rolled> plates;

    AllergenMatrix(DeclarationList list, List<Rolled> plates) {
        this.list = list;
        this.plates = plates;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Caution(Allergens.CAUTION));
        blocks.add(new Block.Text(Arrays.stream(AllergenState.values())
                .map(state -> mark(state) + "  " + state.inWords())
                .collect(Collectors.joining("      "))));
        blocks.add(matrix());
        List<List<String>> named = named();
        if (!named.isEmpty()) {
            blocks.add(new Block.Heading("Named, and to be named"));
            blocks.add(new Block.Grid(
                    List.of(new Column("Plate", 3, false), new Column("What is in it", 7, false)), named, List.of()));
        }
        blocks.add(new Block.Text("List: " + list.title() + ". " + list.source() + ". Sulphites: "
                + list.sulphites().inWords() + "."));
        return blocks;
    }

    private Block matrix() {
        List<Column> columns = new ArrayList<>();
        columns.add(new Column("Plate", 10, false));
        list.groups().forEach(group -> columns.add(Column.marks(group.name(), 2)));
        List<List<String>> rows = plates.stream().map(this::row).toList();
        return new Block.Grid(columns, rows, List.of());
    }

    private List<String> row(Rolled plate) {
        AllergenSheet sheet = plate.by(list);
        List<String> cells = new ArrayList<>();
        cells.add(plate.name());
        for (Group group : list.groups()) {
            cells.add(sheet.rows().stream()
                    .filter(row -> row.group().id().equals(group.id()))
                    .map(row -> mark(row.state()))
                    .findFirst()
                    .orElse("?"));
        }
        return cells;
    }

    static String mark(AllergenState state) {
        return switch (state) {
            case CONTAINS -> "●";
            case MAY_CONTAIN -> "○";
            case UNKNOWN -> "?";
            case BELOW -> "<";
            case NONE -> "–";
        };
    }

    private List<List<String>> named() {
        List<List<String>> rows = new ArrayList<>();
        for (Rolled plate : plates) {
            AllergenSheet sheet = plate.by(list);
            String said = Stream.concat(
                            sheet.rows().stream()
                                    .filter(row -> !row.names().isEmpty()
                                            || !row.asks().isEmpty())
                                    .map(AllergenMatrix::sentence),
                            Stream.concat(
                                    sheet.othersContained().stream()
                                            .map(each -> "contains " + each.inWords() + ", not on this list"),
                                    sheet.othersPossible().stream()
                                            .map(each -> "may contain " + each.inWords() + ", not on this list")))
                    .collect(Collectors.joining("\n"));
            if (!said.isEmpty()) {
                rows.add(List.of(plate.name(), said));
            }
        }
        return rows;
    }

    private static String sentence(AllergenSheet.Row row) {
        String asks = row.asks().isEmpty() ? "" : " – " + String.join(" ", row.asks());
        return row.group().name() + ": " + row.inWords() + asks;
    }
}
