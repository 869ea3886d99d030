package etamine.recipes.internal.find;

import etamine.base.MapChanges;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.recipes.RecipeSearch.Place;
import etamine.recipes.internal.RecipeGraph;
import etamine.recipes.internal.line.ItemNames;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The texts of all recipes, plain and ready to be searched, as of one moment.
 *
 * @param graph the recipes they are of
 * @param items the items their names are of
 * @param all one for each recipe, by its id
 */
record RecipeTexts(RecipeGraph graph, Map<String, Item> items, SortedMap<String, Text> all) {
    static final RecipeTexts NONE = new RecipeTexts(RecipeGraph.of(Map.of()), Map.of(), new TreeMap<>());
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
        if (recipes == graph && items == now) {
            return this;
        }
        Set<String> changed = new HashSet<>(recipes.changesFrom(graph));
        renamed(items, now)
                .forEach(item -> Stream.concat(recipes.makersOf(item).stream(), recipes.usersOf(item).stream())
                        .forEach(recipe -> changed.add(recipe.id())));
        SortedMap<String, Text> texts = new TreeMap<>(all);
        for (String id : changed) {
            Recipe recipe = recipes.recipes().get(id);
            if (recipe == null) {
                texts.remove(id);
            } else {
                texts.put(id, text(recipe, things(recipe, now)));
            }
        }
        return new RecipeTexts(recipes, now, Collections.unmodifiableSortedMap(texts));
    }

    /** The items that came, went or are called otherwise now. */
    private static Set<String> renamed(Map<String, Item> then, Map<String, Item> fresh) {
        Set<String> renamed = new HashSet<>(MapChanges.between(then, fresh));
        renamed.removeIf(id -> then.containsKey(id)
                && fresh.containsKey(id)
                && then.get(id).name().equals(fresh.get(id).name()));
        return renamed;
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
