package etamine.recipes.internal.card;

import etamine.documents.Block;
import etamine.documents.Block.Column;
import etamine.kitchen.allergen.Allergen;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.item.Allergens;
import etamine.recipes.AllergenReasons;
import etamine.recipes.AllergenSheet;
import etamine.recipes.AllergenState;
import etamine.recipes.Suitability;
import etamine.recipes.Way;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The allergens of a card, by the list of the house, with the ways they come in. */
final class CardAllergens {
    private static final String FIGURES =
            "Temperatures, holding and keeping times are this kitchen's own figures, never safety limits; local codes and "
                    + "licensed practice decide.";
    private static final int WAYS = 6;

    private final DeclarationList list;
    private final AllergenReasons reasons;

    CardAllergens(DeclarationList list, AllergenReasons reasons) {
        this.list = list;
        this.reasons = reasons;
    }

    /** A heading, a row for each group that is not free of question, and the caution; kept together. */
    Block block() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Allergens (" + list.title() + ")"));
        List<List<String>> rows = rows();
        if (rows.isEmpty()) {
            blocks.add(new Block.Text("None listed in anything it is made of."));
        } else {
            blocks.add(new Block.Grid(
                    List.of(
                            new Column("Group", 5, false),
                            new Column("State", 6, false),
                            new Column("Through", 13, false)),
                    rows,
                    List.of()));
        }
        diets().ifPresent(text -> blocks.add(new Block.Text(text)));
        blocks.add(new Block.Caution(Allergens.CAUTION + "\n" + FIGURES));
        return new Block.Together(blocks);
    }

    private List<List<String>> rows() {
        AllergenSheet sheet = reasons.rolled().by(list);
        List<List<String>> rows = new ArrayList<>();
        for (AllergenSheet.Row row : sheet.rows()) {
            if (row.state() == AllergenState.CONTAINS || row.state() == AllergenState.MAY_CONTAIN) {
                rows.add(List.of(row.group().name(), sentence(row), ways(allergens(row))));
            } else if (row.state() == AllergenState.BELOW) {
                rows.add(List.of(row.group().name(), sentence(row), ""));
            }
        }
        others(sheet.othersContained(), "contains", rows);
        others(sheet.othersPossible(), "may contain", rows);
        if (!reasons.rolled().known()) {
            rows.add(List.of("All others", "unknown", "not established: " + lines(reasons.unknown())));
        }
        return rows;
    }

    private static String sentence(AllergenSheet.Row row) {
        return Stream.concat(Stream.of(row.inWords()), row.asks().stream()).collect(Collectors.joining("\n"));
    }

    private static List<Allergen> allergens(AllergenSheet.Row row) {
        return row.state() == AllergenState.CONTAINS ? row.contained() : row.possible();
    }

    private void others(List<Allergen> allergens, String state, List<List<String>> rows) {
        allergens.forEach(allergen ->
                rows.add(List.of(allergen.inWords() + " (not on this list)", state, ways(List.of(allergen)))));
    }

    private String ways(List<Allergen> allergens) {
        return lines(allergens.stream()
                .flatMap(allergen -> reasons.ways(allergen).stream())
                .distinct()
                .toList());
    }

    private static String lines(List<Way> ways) {
        String named = ways.stream().limit(WAYS).map(CardAllergens::path).collect(Collectors.joining("\n"));
        return ways.size() > WAYS ? named + "\nand " + (ways.size() - WAYS) + " more" : named;
    }

    /** The way without its first stop, which is the card itself. */
    private static String path(Way way) {
        return way.stops().size() < 2
                ? way.inWords()
                : new Way(way.stops().subList(1, way.stops().size())).inWords();
    }

    private Optional<String> diets() {
        String said = new TreeMap<>(reasons.rolled().diets())
                .entrySet().stream()
                        .map(diet -> diet.getKey() + ": " + inWords(diet.getValue()))
                        .collect(Collectors.joining("; "));
        return Optional.of(said).filter(text -> !text.isEmpty());
    }

    private static String inWords(Suitability suitability) {
        return suitability == Suitability.UNKNOWN ? "not known" : suitability.inWords();
    }
}
