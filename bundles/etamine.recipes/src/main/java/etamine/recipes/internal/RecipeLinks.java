package etamine.recipes.internal;

import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which recipes make an item and which use it, each in the order of ids. Filled once, then only read. */
final class RecipeLinks {
    private static final int FEW = 16;

    private final Map<String, List<Recipe>> makers;
    private final Map<String, List<Recipe>> users;
    private Set<String> archived;

    private RecipeLinks(Map<String, List<Recipe>> makers, Map<String, List<Recipe>> users, Set<String> archived) {
        this.makers = makers;
        this.users = users;
        this.archived = archived;
    }

    /** The links among these recipes, given in the order of their ids. */
    static RecipeLinks of(Collection<Recipe> recipes) {
        Set<String> archived = new HashSet<>();
        RecipeLinks links = new RecipeLinks(new HashMap<>(), new HashMap<>(), archived);
        for (Recipe recipe : recipes) {
            recipe.makes().forEach(make -> append(links.makers, make.item(), recipe));
            for (Use use : recipe.uses()) {
                append(links.users, use.item(), recipe);
                use.substitutes().forEach(substitute -> append(links.users, substitute, recipe));
            }
        }
        links.makers.keySet().stream().filter(links::isArchived).forEach(archived::add);
        return links;
    }

    private static void append(Map<String, List<Recipe>> index, String item, Recipe recipe) {
        List<Recipe> list = index.computeIfAbsent(item, key -> new ArrayList<>(1));
        if (list.isEmpty() || list.get(list.size() - 1) != recipe) {
            list.add(recipe);
        }
    }

    /** The links once some recipes have gone and others have come; one that has changed is among both. */
    RecipeLinks with(Collection<Recipe> gone, Collection<Recipe> come) {
        RecipeLinks links = new RecipeLinks(new HashMap<>(makers), new HashMap<>(users), archived);
        Set<String> made = new HashSet<>();
        for (Recipe recipe : gone) {
            made.addAll(made(recipe));
            made(recipe).forEach(item -> remove(links.makers, item, recipe));
            used(recipe).forEach(item -> remove(links.users, item, recipe));
        }
        for (Recipe recipe : come) {
            made.addAll(made(recipe));
            made(recipe).forEach(item -> insert(links.makers, item, recipe));
            used(recipe).forEach(item -> insert(links.users, item, recipe));
        }
        made.forEach(links::archive);
        return links;
    }

    private static void remove(Map<String, List<Recipe>> index, String item, Recipe recipe) {
        List<Recipe> left = new ArrayList<>(index.getOrDefault(item, List.of()));
        left.removeIf(each -> each == recipe);
        if (left.isEmpty()) {
            index.remove(item);
        } else {
            index.put(item, left);
        }
    }

    private static void insert(Map<String, List<Recipe>> index, String item, Recipe recipe) {
        List<Recipe> more = new ArrayList<>(index.getOrDefault(item, List.of()));
        int at = 0;
        while (at < more.size() && more.get(at).id().compareTo(recipe.id()) < 0) {
            at++;
        }
        more.add(at, recipe);
        index.put(item, more);
    }

    /** Keeps the very same set as long as nothing in it changes, so that others see at once that nothing has. */
    private void archive(String item) {
        boolean now = isArchived(item);
        if (now != archived.contains(item)) {
            archived = new HashSet<>(archived);
            if (now) {
                archived.add(item);
            } else {
                archived.remove(item);
            }
        }
    }

    private boolean isArchived(String item) {
        List<Recipe> candidates = makersOf(item);
        return !candidates.isEmpty()
                && candidates.stream().allMatch(recipe -> recipe.standing().archived());
    }

    private static Set<String> made(Recipe recipe) {
        Set<String> items = new HashSet<>();
        recipe.makes().stream().map(Make::item).forEach(items::add);
        return items;
    }

    private static Set<String> used(Recipe recipe) {
        Set<String> items = new HashSet<>();
        recipe.uses().forEach(use -> {
            items.add(use.item());
            items.addAll(use.substitutes());
        });
        return items;
    }

    List<Recipe> makersOf(String item) {
        return Collections.unmodifiableList(makers.getOrDefault(item, List.of()));
    }

    List<Recipe> usersOf(String item) {
        return Collections.unmodifiableList(users.getOrDefault(item, List.of()));
    }

    /** The items that only archived recipes make. */
    Set<String> archivedItems() {
        return archived;
    }

    /** The recipes that use anything a recipe makes or name it as a substitute. */
    Collection<Recipe> usersOf(Recipe recipe) {
        if (recipe.makes().size() == 1) {
            return usersOf(recipe.makes().get(0).item());
        }
        Map<String, Recipe> all = new LinkedHashMap<>();
        recipe.makes().forEach(make -> usersOf(make.item()).forEach(user -> all.put(user.id(), user)));
        return all.values();
    }

    /** The recipes that make anything a recipe uses or names as a substitute; found fast where few are needed. */
    Collection<Recipe> makersFor(Recipe recipe) {
        List<Recipe> few = new ArrayList<>(4);
        for (Use use : recipe.uses()) {
            for (Recipe maker : makers.getOrDefault(use.item(), List.of())) {
                addOnce(few, maker);
            }
            if (!use.substitutes().isEmpty() || few.size() > FEW) {
                return allMakersFor(recipe);
            }
        }
        return few;
    }

    private static void addOnce(List<Recipe> few, Recipe maker) {
        for (Recipe known : few) {
            if (known == maker) {
                return;
            }
        }
        few.add(maker);
    }

    private Collection<Recipe> allMakersFor(Recipe recipe) {
        Map<String, Recipe> all = new LinkedHashMap<>();
        for (Use use : recipe.uses()) {
            makersOf(use.item()).forEach(maker -> all.put(maker.id(), maker));
            use.substitutes().forEach(substitute -> makersOf(substitute).forEach(maker -> all.put(maker.id(), maker)));
        }
        return all.values();
    }
}
