package etamine.recipes;

import etamine.measures.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Joins the small sources and ends of a crowded layer into one of each kind. Used once. */
final class RiverGathering {
    private final River river;
    private final int most;
    private final Map<String, String> joined = new HashMap<>();
    private final Map<String, Integer> counts = new HashMap<>();

    RiverGathering(River river, int most) {
        this.river = river;
        this.most = most;
    }

    River run() {
        Map<Integer, List<River.Node>> layers = new HashMap<>();
        river.nodes()
                .forEach(node -> layers.computeIfAbsent(node.layer(), key -> new ArrayList<>())
                        .add(node));
        layers.values().stream().filter(layer -> layer.size() > most).forEach(this::crowd);
        if (joined.isEmpty()) {
            return river;
        }
        return new River(
                river.recipe(), river.name(), river.gives(), nodes(), links(), river.unweighed(), river.remarks());
    }

    private void crowd(List<River.Node> layer) {
        List<River.Node> small = layer.stream()
                .filter(node -> node.kind().source() || node.kind().end() && node.kind() != River.Kind.SERVED)
                .sorted(Comparator.comparing(River.Node::amount))
                .toList();
        List<River.Node> crowd = small.subList(0, Math.min(small.size(), layer.size() - most + 1));
        for (River.Kind kind : River.Kind.values()) {
            List<River.Node> alike =
                    crowd.stream().filter(node -> node.kind() == kind).toList();
            if (alike.size() > 1) {
                String others = "others:" + alike.get(0).layer() + ":" + kind;
                alike.forEach(node -> joined.put(node.id(), others));
                counts.put(others, alike.size());
            }
        }
    }

    private List<River.Node> nodes() {
        Map<String, River.Node> nodes = new LinkedHashMap<>();
        for (River.Node node : river.nodes()) {
            String others = joined.get(node.id());
            if (others == null) {
                nodes.put(node.id(), node);
            } else {
                String name = counts.get(others) + " others, " + node.kind().inWords();
                Quantity before = nodes.containsKey(others)
                        ? nodes.get(others).amount()
                        : Quantity.zero(node.amount().unit());
                Quantity sum = before.plus(node.amount());
                nodes.put(others, new River.Node(others, node.kind(), name, "", node.layer(), sum));
            }
        }
        return List.copyOf(nodes.values());
    }

    private List<River.Link> links() {
        Map<List<String>, River.Link> links = new LinkedHashMap<>();
        for (River.Link link : river.links()) {
            String from = joined.getOrDefault(link.from(), link.from());
            String to = joined.getOrDefault(link.to(), link.to());
            boolean whole = from.equals(link.from()) && to.equals(link.to());
            links.merge(
                    List.of(from, to, whole ? link.what() : ""),
                    new River.Link(from, to, whole ? link.what() : "others", link.amount()),
                    (one, other) ->
                            new River.Link(from, to, one.what(), one.amount().plus(other.amount())));
        }
        return List.copyOf(links.values());
    }
}
