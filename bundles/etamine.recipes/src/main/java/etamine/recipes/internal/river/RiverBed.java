package etamine.recipes.internal.river;

import etamine.kitchen.recipe.Recipe;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.River;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.form.RecipeForm;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Collects nodes and links and gives each node its layer. Flows of nothing leave no trace. Used once. */
final class RiverBed {
    private final ItemView items;
    private final Unit unit;
    private final Map<String, Spot> spots = new LinkedHashMap<>();
    private final Map<List<String>, Ratio> links = new LinkedHashMap<>();

    private record Spot(River.Kind kind, String name, String subject) {}

    RiverBed(ItemView items, Unit unit) {
        this.items = items;
        this.unit = unit;
    }

    String made(Recipe recipe) {
        return spot("made:" + recipe.id(), new Spot(River.Kind.MADE, recipe.name(), recipe.id()));
    }

    String bought(String item) {
        return spot("bought:" + item, new Spot(River.Kind.BOUGHT, items.name(item), item));
    }

    private String spot(String id, Spot spot) {
        spots.putIfAbsent(id, spot);
        return id;
    }

    void flow(String from, String to, String item, Ratio amount) {
        link(from, to, items.name(item), amount);
    }

    void enter(River.Kind kind, String to, Ratio amount) {
        if (amount.signum() > 0) {
            String id = spot(
                    word(kind) + ":" + to,
                    new Spot(kind, capital(kind.inWords()), spots.get(to).subject()));
            link(id, to, kind.inWords(), amount);
        }
    }

    /** What leaves a node for good, by what it is called or the item of that id. */
    void leave(String from, River.Kind kind, String what, Ratio amount) {
        if (amount.signum() > 0) {
            String name = items.name(what);
            String id = spot(
                    word(kind) + ":" + from + ":" + what,
                    new Spot(kind, name, spots.get(from).subject()));
            link(from, id, name, amount);
        }
    }

    void served(String from, Recipe recipe, Ratio amount) {
        String id = spot("served", new Spot(River.Kind.SERVED, recipe.name(), recipe.id()));
        link(from, id, recipe.name(), amount);
    }

    private void link(String from, String to, String what, Ratio amount) {
        if (amount.signum() > 0) {
            links.merge(List.of(from, to, what), amount, Ratio::plus);
        }
    }

    private static String word(River.Kind kind) {
        return RecipeForm.word(kind).replace('_', '-');
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    River river(Recipe last, Quantity gives, List<River.Unweighed> unweighed, List<String> remarks) {
        Map<String, Integer> layers = layers();
        Map<String, Ratio> in = new HashMap<>();
        Map<String, Ratio> out = new HashMap<>();
        List<River.Link> flows = new ArrayList<>();
        links.forEach((way, amount) -> {
            out.merge(way.get(0), amount, Ratio::plus);
            in.merge(way.get(1), amount, Ratio::plus);
            flows.add(new River.Link(way.get(0), way.get(1), way.get(2), new Quantity(amount, unit)));
        });
        List<River.Node> nodes = new ArrayList<>();
        spots.forEach((id, spot) -> {
            Ratio amount = (spot.kind().source() ? out : in).getOrDefault(id, Ratio.ZERO);
            if (amount.signum() > 0) {
                Quantity through = new Quantity(amount, unit);
                nodes.add(new River.Node(id, spot.kind(), spot.name(), spot.subject(), layers.get(id), through));
            }
        });
        nodes.sort(Comparator.comparingInt(River.Node::layer));
        return new River(last.id(), last.name(), gives, nodes, flows, unweighed, remarks);
    }

    /** Each node one layer after the last that flows into it; sources right before the first that they flow into. */
    private Map<String, Integer> layers() {
        Map<String, Integer> layers = new HashMap<>();
        spots.keySet().forEach(id -> layers.put(id, 0));
        boolean moved = true;
        while (moved) {
            moved = false;
            for (List<String> way : links.keySet()) {
                moved |= push(layers, way.get(0), way.get(1));
            }
        }
        Map<String, Integer> nearest = new HashMap<>();
        links.keySet().stream()
                .filter(way -> kind(way.get(0)).source() && !kind(way.get(1)).end())
                .forEach(way -> nearest.merge(way.get(0), layers.get(way.get(1)) - 1, Math::min));
        layers.putAll(nearest);
        links.keySet().forEach(way -> push(layers, way.get(0), way.get(1)));
        return layers;
    }

    private boolean push(Map<String, Integer> layers, String from, String to) {
        int least = layers.get(from) + 1;
        return layers.get(to) < least && layers.put(to, least) < least;
    }

    private River.Kind kind(String id) {
        return spots.get(id).kind();
    }
}
