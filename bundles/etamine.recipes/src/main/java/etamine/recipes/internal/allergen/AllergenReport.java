package etamine.recipes.internal.allergen;

import etamine.base.verb.TextTable;
import etamine.kitchen.allergen.Allergen;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.allergen.Group;
import etamine.kitchen.item.Allergens;
import etamine.recipes.AllergenReasons;
import etamine.recipes.AllergenSheet;
import etamine.recipes.AllergenState;
import etamine.recipes.Suitability;
import etamine.recipes.Way;
import etamine.recipes.internal.form.RecipeForm;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What the console says of allergens, for people and for machines. */
final class AllergenReport {
    private final DeclarationList list;
    private final List<AllergenReasons> chosen;

    AllergenReport(DeclarationList list, List<AllergenReasons> chosen) {
        this.list = list;
        this.chosen = List.copyOf(chosen);
    }

    /** Whether everything is known and named. */
    boolean settled() {
        return chosen.stream()
                .allMatch(each -> each.rolled().known()
                        && each.rolled().by(list).rows().stream()
                                .allMatch(row -> row.asks().isEmpty()));
    }

    Map<String, Object> json() {
        Map<String, Object> of = new LinkedHashMap<>();
        of.put("id", list.id());
        of.put("title", list.title());
        of.put("source", list.source());
        of.put("sulphites", list.sulphites().inWords());
        of.put("groups", list.groups().stream().map(AllergenReport::json).toList());
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("list", of);
        json.put("caution", Allergens.CAUTION);
        json.put("allergens", chosen.stream().map(this::json).toList());
        return json;
    }

    private static Map<String, Object> json(Group group) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", group.id());
        json.put("name", group.name());
        json.put("named", group.named());
        return json;
    }

    private Map<String, Object> json(AllergenReasons reasons) {
        AllergenSheet sheet = reasons.rolled().by(list);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", reasons.rolled().id());
        json.put("name", reasons.rolled().name());
        json.put("known", reasons.rolled().known());
        json.put(
                "groups",
                sheet.rows().stream()
                        .filter(row -> row.state() != AllergenState.NONE)
                        .map(AllergenReport::json)
                        .toList());
        json.put("notOnThisList", others(sheet).map(Allergen::inWords).toList());
        json.put("contains", why(reasons.contained()));
        json.put("mayContain", why(reasons.possible()));
        json.put("unknown", ways(reasons.unknown()));
        json.put("diets", diets(reasons));
        return json;
    }

    private static Map<String, Object> json(AllergenSheet.Row row) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("group", row.group().id());
        json.put("state", word(row.state()));
        json.put("names", row.names());
        json.put("asks", row.asks());
        return json;
    }

    private static List<Map<String, Object>> diets(AllergenReasons reasons) {
        List<Map<String, Object>> all = new ArrayList<>();
        new TreeMap<>(reasons.rolled().diets()).forEach((diet, verdict) -> {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("diet", diet);
            json.put("suits", word(verdict));
            json.put("because", ways(reasons.diets().getOrDefault(diet, List.of())));
            all.add(json);
        });
        return all;
    }

    private static List<Map<String, Object>> why(Map<Allergen, List<Way>> ways) {
        return ways.entrySet().stream()
                .sorted(Map.Entry.comparingByKey(Comparator.comparing(Allergen::inWords)))
                .map(each -> {
                    Map<String, Object> json = new LinkedHashMap<>();
                    json.put("allergen", each.getKey().inWords());
                    each.getKey().amount().ifPresent(amount -> json.put("milligramsPerKilogram", amount.toString()));
                    json.put("because", ways(each.getValue()));
                    return json;
                })
                .toList();
    }

    private static List<Map<String, Object>> ways(List<Way> ways) {
        return ways.stream()
                .map(way -> {
                    Map<String, Object> json = new LinkedHashMap<>();
                    json.put("item", way.source().item());
                    json.put("path", way.stops().stream().map(Way.Stop::item).toList());
                    json.put("text", way.inWords());
                    return json;
                })
                .toList();
    }

    private static String word(Enum<?> constant) {
        return RecipeForm.word(constant).replace('_', '-');
    }

    private static Stream<Allergen> others(AllergenSheet sheet) {
        return Stream.concat(sheet.othersContained().stream(), sheet.othersPossible().stream());
    }

    List<String> matrix() {
        TextTable table = new TextTable("Recipe", "", "Contains", "May contain", "Unknown", "Not on this list");
        for (AllergenReasons each : chosen) {
            AllergenSheet sheet = each.rolled().by(list);
            table.row(
                    each.rolled().id(),
                    each.rolled().name(),
                    groups(sheet, AllergenState.CONTAINS),
                    groups(sheet, AllergenState.MAY_CONTAIN),
                    each.rolled().known() ? "" : "because of " + sources(each.unknown()),
                    String.join(", ", others(sheet).map(Allergen::inWords).toList()));
        }
        List<String> lines = new ArrayList<>(chosen.isEmpty() ? List.of("There are no plates yet.") : table.lines());
        foot(lines);
        return lines;
    }

    private static String groups(AllergenSheet sheet, AllergenState state) {
        return String.join(
                ", ",
                sheet.rows().stream()
                        .filter(row -> row.state() == state)
                        .map(row -> row.group().name().toLowerCase(Locale.ROOT)
                                + (row.names().isEmpty() ? "" : " (" + String.join(", ", row.names()) + ")"))
                        .toList());
    }

    private static String sources(List<Way> ways) {
        return String.join(", ", ways.stream().map(way -> way.source().name()).toList());
    }

    List<String> details() {
        List<String> lines = new ArrayList<>();
        chosen.forEach(each -> details(each, lines));
        foot(lines);
        return lines;
    }

    private void details(AllergenReasons reasons, List<String> lines) {
        lines.add(reasons.rolled().name());
        AllergenSheet sheet = reasons.rolled().by(list);
        for (AllergenSheet.Row row : sheet.rows()) {
            if (row.state() != AllergenState.NONE) {
                lines.add("  " + row.group().name() + ": " + row.inWords());
                row.asks().forEach(ask -> lines.add("    ! " + ask));
                Stream.concat(row.contained().stream(), row.possible().stream())
                        .forEach(each -> reasons.ways(each)
                                .forEach(way -> lines.add("    " + each.inWords() + ": " + way.inWords())));
            }
        }
        others(sheet).forEach(each -> {
            lines.add("  Not on this list: " + each.inWords());
            reasons.ways(each).forEach(way -> lines.add("    " + way.inWords()));
        });
        reasons.unknown().forEach(way -> lines.add("  Unknown because of " + way.inWords()));
        new TreeMap<>(reasons.rolled().diets()).forEach((diet, verdict) -> {
            lines.add("  " + diet + ": " + verdict.inWords());
            if (verdict != Suitability.SUITS) {
                reasons.diets().getOrDefault(diet, List.of()).forEach(way -> lines.add("    " + way.inWords()));
            }
        });
        lines.add("");
    }

    private void foot(List<String> lines) {
        lines.add("By the list of " + list.title() + ": " + list.source() + ".");
        lines.add(Allergens.CAUTION);
    }
}
