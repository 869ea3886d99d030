package etamine.recipes.internal.allergen;

import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.recipes.Way;
import etamine.recipes.internal.FactRoll;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Finds the shortest ways from a recipe to each thing that a fact comes from. Used once. */
final class WaySearch {
    /** Beyond this many the nearest say enough. */
    private static final int MOST = 40;

    private final FactRoll roll;
    private final UnaryOperator<String> names;
    private final int bit;
    private final Map<String, Visit> visits = new HashMap<>();
    private final Deque<String> open = new ArrayDeque<>();

    private record Visit(Optional<String> from, boolean instead) {}

    WaySearch(FactRoll roll, UnaryOperator<String> names, int bit) {
        this.roll = roll;
        this.names = names;
        this.bit = bit;
    }

    /** The ways from a recipe; itself alone when nothing is written that it is made of. */
    List<Way> from(Recipe recipe) {
        Way.Stop start = new Way.Stop(recipe.id(), recipe.name(), false);
        if (recipe.uses().isEmpty()) {
            return List.of(new Way(List.of(start)));
        }
        enter(recipe, Optional.empty());
        return follow(Optional.of(start));
    }

    /** The ways from an item. */
    List<Way> from(String item) {
        visits.put(item, new Visit(Optional.empty(), false));
        open.add(item);
        return follow(Optional.empty());
    }

    private List<Way> follow(Optional<Way.Stop> start) {
        List<Way> found = new ArrayList<>();
        while (!open.isEmpty() && found.size() < MOST) {
            String item = open.remove();
            if (roll.states(item, bit)) {
                found.add(way(start, item));
            }
            roll.graph().makersOf(item).forEach(maker -> enter(maker, Optional.of(item)));
        }
        return found;
    }

    private void enter(Recipe recipe, Optional<String> from) {
        for (Use use : recipe.uses()) {
            visit(use.item(), new Visit(from, false));
            use.substitutes().forEach(substitute -> visit(substitute, new Visit(from, true)));
        }
    }

    private void visit(String item, Visit visit) {
        if (roll.has(item, bit) && visits.putIfAbsent(item, visit) == null) {
            open.add(item);
        }
    }

    private Way way(Optional<Way.Stop> start, String source) {
        LinkedList<Way.Stop> stops = new LinkedList<>();
        Optional<String> at = Optional.of(source);
        while (at.isPresent()) {
            Visit visit = visits.get(at.get());
            stops.addFirst(new Way.Stop(at.get(), names.apply(at.get()), visit.instead()));
            at = visit.from();
        }
        start.ifPresent(stops::addFirst);
        return new Way(stops);
    }
}
