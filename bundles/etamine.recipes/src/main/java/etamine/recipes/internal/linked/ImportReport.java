package etamine.recipes.internal.linked;

import etamine.recipes.FoundRecipes;
import etamine.recipes.FoundRecipes.Found;
import etamine.recipes.FoundRecipes.Line;
import etamine.recipes.FoundRecipes.State;
import etamine.recipes.RecipeFiles.Taken;
import etamine.recipes.internal.form.RecipeForm;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What became of a file of recipes, for people and for machines. */
final class ImportReport {
    private ImportReport() {}

    static Map<String, Object> json(FoundRecipes found, Optional<Taken> taken, boolean fresh) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", found.file().toString());
        json.put("written", taken.filter(each -> each.problems().isEmpty()).isPresent());
        json.put(
                "recipes",
                found.recipes().stream().map(each -> json(each, fresh)).toList());
        json.put("taken", taken.map(Taken::recipes).orElseGet(List::of));
        json.put("newIngredients", taken.map(Taken::ingredients).orElseGet(List::of));
        List<String> problems = new ArrayList<>(found.problems());
        taken.ifPresent(each -> problems.addAll(each.problems()));
        json.put("problems", problems);
        return json;
    }

    private static Map<String, Object> json(Found found, boolean fresh) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("number", found.number());
        json.put("pointer", found.pointer());
        json.put("id", found.recipe().id());
        json.put("name", found.recipe().name());
        json.put("presence", RecipeForm.word(found.presence()));
        json.put("complete", found.complete(fresh));
        json.put("lines", found.lines().stream().map(ImportReport::json).toList());
        json.put("remarks", found.remarks());
        return json;
    }

    private static Map<String, Object> json(Line line) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("text", line.text());
        json.put("state", RecipeForm.word(line.state()));
        line.use().ifPresent(use -> {
            json.put("item", use.item());
            json.put("quantity", use.quantity().toString());
            use.as().ifPresent(as -> json.put("as", as));
        });
        line.fresh().ifPresent(item -> json.put("newIngredient", item.name()));
        if (!line.remark().isEmpty()) {
            json.put("remark", line.remark());
        }
        return json;
    }

    static List<String> lines(FoundRecipes found, Optional<Taken> taken, boolean fresh) {
        List<String> lines = new ArrayList<>();
        for (Found each : found.recipes()) {
            lines.add(each.number() + ". " + each.recipe().name() + ": " + presence(each) + counted(each));
            each.lines().stream()
                    .filter(line -> line.state() != State.CLEAR)
                    .forEach(line -> lines.add("   " + line.state().inWords() + ": " + line.text()
                            + (line.remark().isEmpty() ? "" : " - " + line.remark())));
            each.remarks().forEach(remark -> lines.add("   " + remark));
        }
        found.problems().forEach(problem -> lines.add("! " + problem));
        lines.addAll(taken.map(ImportReport::taken).orElseGet(() -> List.of(untaken(found, fresh))));
        return lines;
    }

    private static String presence(Found found) {
        return switch (found.presence()) {
            case NEW -> "new";
            case CHANGES -> "changes the recipe " + found.recipe().id() + " of the book";
            case SAME -> "the book has it already";
        };
    }

    private static String counted(Found found) {
        long clear = found.lines().stream()
                .filter(line -> line.state() == State.CLEAR)
                .count();
        return ", " + clear + " of " + found.lines().size() + " lines understood";
    }

    private static List<String> taken(Taken taken) {
        if (!taken.problems().isEmpty()) {
            List<String> lines = new ArrayList<>();
            taken.problems().forEach(problem -> lines.add("! " + problem));
            lines.add("Nothing was written.");
            return lines;
        }
        String ingredients = taken.ingredients().isEmpty()
                ? ""
                : ", and new ingredients " + String.join(", ", taken.ingredients()) + " of unknown allergens and price";
        return List.of("Taken into the book: " + String.join(", ", taken.recipes()) + ingredients + ".");
    }

    private static String untaken(FoundRecipes found, boolean fresh) {
        boolean same = found.recipes().stream().allMatch(each -> each.presence() == FoundRecipes.Presence.SAME);
        if (same) {
            return "Nothing was written; there is nothing new in it.";
        }
        boolean offers = found.recipes().stream().anyMatch(each -> !each.complete(fresh) && each.complete(true));
        return "Nothing was written. " + (offers ? "Add new ingredients with --new-ingredients; t" : "T")
                + "ake what is wholly understood with --accept-good, or all with --with-gaps.";
    }
}
