package etamine.recipes.internal.find;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemChanges;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.recipes.RecipeSearch.Place;
import etamine.recipes.internal.RecipeGraph;
import etamine.recipes.internal.line.ItemNames;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The texts of all recipes, plain and ready to be searched, as of one moment.
 *
 * @param graph the recipes they are of
 * @param items the items their names are of
 * @param all one for each recipe, in the order of ids
 */
record RecipeTexts(RecipeGraph graph, Map<String, Item> items, List<Text> all) {
    static final RecipeTexts NONE = new RecipeTexts(RecipeGraph.of(Map.of()), Map.of(), List.of());
    private static final int AROUND = 30;

    /**
     * Where words were found.
     *
     * @param place the least likely place that one of them needed
     * @param rank lower is better
     * @param word the first word that was found elsewhere than in the name; empty when there is none
     */
    record Match(Place place, int rank, String word) {}

    /**
     * One recipe.
     *
     * @param recipe the recipe
     * @param name its name and its id, plain
     * @param things the names of what it uses and makes, plain
     * @param work its steps and notes, plain
     */
    record Text(Recipe recipe, String name, String things, String work) {

        /** Whether all words occur, and how well. */
        Optional<Match> match(List<String> words) {
            Place place = Place.NAME;
            String elsewhere = "";
            for (String word : words) {
                Place found = place(word);
                if (found == null) {
                    return Optional.empty();
                }
                if (found != Place.NAME && elsewhere.isEmpty()) {
                    elsewhere = word;
                }
                place = found.compareTo(place) > 0 ? found : place;
            }
            return Optional.of(new Match(place, place == Place.NAME ? rank(words) : 2 + place.ordinal(), elsewhere));
        }

        private @Nullable Place place(String word) {
            if (name.contains(word)) {
                return Place.NAME;
            }
            if (things.contains(word)) {
                return Place.ITEM;
            }
            return work.contains(word) ? Place.TEXT : null;
        }

        private int rank(List<String> words) {
            if (words.isEmpty() || name.startsWith(words.get(0))) {
                return 0;
            }
            return name.contains(" " + words.get(0)) ? 1 : 2;
        }

        /** The text round the word that was found elsewhere than in the name. */
        String excerpt(Match match) {
            String text = match.place == Place.TEXT && work.contains(match.word) ? work : things;
            int at = match.word.isEmpty() ? -1 : text.indexOf(match.word);
            if (at < 0) {
                return "";
            }
            int from = text.lastIndexOf('\n', at) + 1;
            int end = text.indexOf('\n', at);
            String line = text.substring(Math.max(from, at - AROUND), end < 0 ? text.length() : end);
            return line.substring(0, Math.min(line.length(), match.word.length() + 2 * AROUND))
                    .strip();
        }
    }

    static List<String> words(String typed) {
        return Stream.of(ItemNames.plain(typed).split("\\s+"))
                .filter(word -> !word.isEmpty())
                .limit(20)
                .toList();
    }

    /** The texts of those recipes and items; what has not changed is taken over. */
    RecipeTexts of(RecipeGraph recipes, Map<String, Item> now) {
        boolean sameItems = items == now;
        if (recipes == graph && sameItems) {
            return this;
        }
        Set<String> renamed = sameItems ? Set.of() : renamed(items, now);
        Map<String, Text> before = new HashMap<>();
        all.forEach(text -> before.put(text.recipe.id(), text));
        List<Text> texts = new ArrayList<>(recipes.recipes().size());
        for (Recipe recipe : recipes.recipes().values()) {
            Text was = before.get(recipe.id());
            boolean same = was != null && was.recipe == recipe;
            texts.add(same && !names(recipe, renamed) ? was : text(recipe, things(recipe, now)));
        }
        return new RecipeTexts(recipes, now, List.copyOf(texts));
    }

    /** The items that came, went or are called otherwise now. */
    private static Set<String> renamed(Map<String, Item> then, Map<String, Item> fresh) {
        Set<String> renamed = new HashSet<>(ItemChanges.between(then, fresh));
        renamed.removeIf(id -> then.containsKey(id)
                && fresh.containsKey(id)
                && then.get(id).name().equals(fresh.get(id).name()));
        return renamed;
    }

    private static boolean names(Recipe recipe, Set<String> items) {
        return !items.isEmpty()
                && (recipe.makes().stream().anyMatch(make -> items.contains(make.item()))
                        || recipe.uses().stream()
                                .anyMatch(use -> items.contains(use.item())
                                        || use.substitutes().stream().anyMatch(items::contains)));
    }

    private static Text text(Recipe recipe, String things) {
        StringBuilder work = new StringBuilder();
        for (Step step : recipe.steps()) {
            work.append(step.text())
                    .append('\n')
                    .append(step.equipment())
                    .append('\n')
                    .append(step.station())
                    .append('\n');
        }
        work.append(recipe.making().station()).append('\n').append(recipe.notes());
        return new Text(
                recipe, ItemNames.plain(recipe.name() + "\n" + recipe.id()), things, ItemNames.plain(work.toString()));
    }

    private static String name(Map<String, Item> items, String id) {
        Item item = items.get(id);
        return item == null ? id : item.name();
    }

    private static String things(Recipe recipe, Map<String, Item> items) {
        Set<String> things = new LinkedHashSet<>();
        for (Use use : recipe.uses()) {
            things.add(name(items, use.item()));
            use.substitutes().forEach(other -> things.add(name(items, other)));
        }
        recipe.makes().stream().map(Make::item).map(item -> name(items, item)).forEach(things::add);
        return ItemNames.plain(String.join("\n", things));
    }
}
