package etamine.recipes.ui.internal;

import etamine.base.Explanation;
import etamine.kitchen.allergen.Allergen;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.house.House;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.AllergenReasons;
import etamine.recipes.AllergenRollUp;
import etamine.recipes.AllergenSheet;
import etamine.recipes.AllergenState;
import etamine.recipes.Rolled;
import etamine.recipes.Suitability;
import etamine.recipes.Way;
import etamine.widgets.Tone;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What the page about allergens shows, without widgets. */
final class AllergenModel {
    private final Kitchenware ware;
    private final AllergenRollUp rollUp;

    AllergenModel(Kitchenware ware) {
        this.ware = ware;
        this.rollUp = ware.insight().allergens();
    }

    /** The list the house declares by. */
    DeclarationList list() {
        return ware.others()
                .kitchen()
                .get()
                .map(Kitchen::house)
                .map(House::allergenList)
                .orElse(DeclarationList.EU);
    }

    /** Makes it the list of the house; nothing happens when it is or when the house is not known. */
    void declareBy(DeclarationList chosen) {
        ware.others()
                .kitchen()
                .get()
                .filter(kitchen -> kitchen.house().allergenList() != chosen)
                .ifPresent(kitchen -> kitchen.change(kitchen.house().withAllergenList(chosen)));
    }

    /** Where a list is from and how sure that is. */
    static String source(DeclarationList list) {
        return list.source() + ". Sulphites " + list.sulphites().inWords() + ".";
    }

    /** Every group of the list, then what is not on it, then what is unknown, then the diets. */
    List<AllergenLine> lines(Recipe recipe, DeclarationList list) {
        AllergenReasons reasons = rollUp.why(recipe);
        AllergenSheet sheet = reasons.rolled().by(list);
        List<AllergenLine> lines = new ArrayList<>();
        sheet.rows().forEach(row -> lines.add(group(lines.size(), row, list, reasons)));
        others(sheet).forEach(other -> lines.add(other(lines.size(), other, sheet, reasons)));
        if (!reasons.rolled().known()) {
            lines.add(unknown(lines.size(), reasons.unknown()));
        }
        new TreeMap<>(reasons.rolled().diets())
                .forEach((diet, verdict) -> lines.add(diet(lines.size(), diet, verdict, reasons)));
        return lines;
    }

    private static Stream<Allergen> others(AllergenSheet sheet) {
        return Stream.concat(sheet.othersContained().stream(), sheet.othersPossible().stream());
    }

    private static AllergenLine group(int place, AllergenSheet.Row row, DeclarationList list, AllergenReasons reasons) {
        List<Explanation> parts = new ArrayList<>();
        Stream.concat(row.contained().stream(), row.possible().stream())
                .forEach(allergen -> parts.add(ways(allergen.inWords(), reasons.ways(allergen))));
        if (row.state() == AllergenState.UNKNOWN) {
            parts.add(ways("Unknown because of", reasons.unknown()));
        }
        parts.add(Explanation.leaf("Declared by the list of", list.title(), source(list)));
        String why = Stream.concat(row.contained().stream(), row.possible().stream())
                .flatMap(allergen -> reasons.ways(allergen).stream())
                .findFirst()
                .map(Way::below)
                .orElse("");
        String asks = String.join(" ", row.asks());
        return new AllergenLine(
                place,
                row.group().name(),
                row.inWords(),
                asks,
                why,
                tone(row.state()),
                story(row.group().name(), row.inWords(), parts));
    }

    private static AllergenLine other(int place, Allergen other, AllergenSheet sheet, AllergenReasons reasons) {
        boolean contained = sheet.othersContained().contains(other);
        String state = contained ? AllergenState.CONTAINS.inWords() : AllergenState.MAY_CONTAIN.inWords();
        List<Way> ways = reasons.ways(other);
        return new AllergenLine(
                place,
                other.inWords(),
                state,
                "Not on this list.",
                first(ways),
                contained ? Tone.WARN : Tone.QUIET,
                story(other.inWords(), state + "; not on this list", List.of(ways(other.inWords(), ways))));
    }

    private static AllergenLine unknown(int place, List<Way> ways) {
        return new AllergenLine(
                place,
                "Everything else",
                "unknown",
                "Establish the allergens of " + ways.size() + (ways.size() == 1 ? " ingredient." : " ingredients."),
                first(ways),
                Tone.WARN,
                story("Everything else", "unknown", List.of(ways("Unknown because of", ways))));
    }

    private static AllergenLine diet(int place, String diet, Suitability verdict, AllergenReasons reasons) {
        List<Way> ways = reasons.diets().getOrDefault(diet, List.of());
        Tone tone = switch (verdict) {
            case SUITS -> Tone.GOOD;
            case UNSUITED -> Tone.BAD;
            case UNKNOWN -> Tone.WARN;
        };
        String title = diet.substring(0, 1).toUpperCase(Locale.ROOT) + diet.substring(1);
        List<Explanation> parts = ways.isEmpty() ? List.of() : List.of(ways("Because of", ways));
        return new AllergenLine(
                place, title, verdict.inWords(), "", first(ways), tone, story(title, verdict.inWords(), parts));
    }

    private static String first(List<Way> ways) {
        return ways.stream().findFirst().map(Way::below).orElse("");
    }

    private static Explanation ways(String title, List<Way> ways) {
        return Explanation.of(
                title,
                "",
                ways.stream()
                        .map(way -> Explanation.leaf(way.source().name(), "", way.inWords()))
                        .toList());
    }

    private static Explanation story(String title, String value, List<Explanation> parts) {
        return new Explanation(title, value, Allergens.CAUTION, parts, Optional.empty());
    }

    static Tone tone(AllergenState state) {
        return switch (state) {
            case CONTAINS -> Tone.BAD;
            case MAY_CONTAIN, UNKNOWN -> Tone.WARN;
            case BELOW, NONE -> Tone.QUIET;
        };
    }

    /** The plates and drinks that are offered. */
    List<MenuLine> menu(DeclarationList list) {
        List<MenuLine> lines = new ArrayList<>();
        Map<String, Rolled> rolled = rollUp.recipes();
        for (Recipe recipe : ware.recipes().all().values()) {
            boolean offered = recipe.kind() == Kind.PLATE || recipe.kind() == Kind.DRINK;
            if (offered && !recipe.standing().archived() && rolled.containsKey(recipe.id())) {
                lines.add(line(recipe, rolled.get(recipe.id()).by(list)));
            }
        }
        return lines;
    }

    private static MenuLine line(Recipe recipe, AllergenSheet sheet) {
        Map<String, AllergenState> states = new LinkedHashMap<>();
        sheet.rows().forEach(row -> states.put(row.group().id(), row.state()));
        String others = String.join(", ", others(sheet).map(Allergen::inWords).toList());
        return new MenuLine(recipe.id(), recipe.name(), KindText.of(recipe.kind()), states, others);
    }

    /** A state in a narrow cell. */
    static String mark(AllergenState state) {
        return switch (state) {
            case CONTAINS -> "yes";
            case MAY_CONTAIN -> "may";
            case UNKNOWN -> "?";
            case BELOW -> "low";
            case NONE -> "–";
        };
    }
}
