package etamine.recipes.ui.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Quantity;
import etamine.recipes.River;
import etamine.recipes.Rivers;
import etamine.widgets.RiverDrawing.Pool;
import etamine.widgets.RiverDrawing.Role;
import etamine.widgets.RiverDrawing.Stream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What the page about the yield shows, without widgets. */
final class RiverModel {
    private static final int MOST = 16;

    private final Rivers rivers;
    private final Function<Quantity, String> text;

    RiverModel(Rivers rivers, Function<Quantity, String> text) {
        this.rivers = rivers;
        this.text = text;
    }

    RiverView view(Recipe recipe, boolean wholeBatch) {
        River river = wholeBatch ? rivers.batch(recipe) : rivers.portion(recipe);
        River drawn = river.gathered(MOST);
        List<Pool> pools = drawn.nodes().stream().map(node -> pool(drawn, node)).toList();
        List<Stream> streams = drawn.links().stream()
                .map(link -> new Stream(link.from(), link.to(), drawn.part(link.amount())))
                .toList();
        String title = "The river of " + recipe.name() + ", " + text.apply(river.gives());
        return new RiverView(river, drawn, title, pools, streams, rows(river), notes(river));
    }

    private Pool pool(River river, River.Node node) {
        return new Pool(
                node.id(),
                node.layer(),
                river.part(node.amount()),
                role(node.kind()),
                label(node),
                text.apply(node.amount()));
    }

    /** What a node is called: what falls away says so. */
    static String label(River.Node node) {
        boolean leaves = node.kind().end() && node.kind() != River.Kind.SERVED;
        return leaves && !node.subject().isEmpty()
                ? node.name() + ", " + node.kind().inWords()
                : node.name();
    }

    private static Role role(River.Kind kind) {
        return switch (kind) {
            case BOUGHT -> Role.SOURCE;
            case WATER, UNWRITTEN -> Role.WATER;
            case MADE -> Role.WORK;
            case SERVED -> Role.GOAL;
            case TRIM, LOST, SPILT, LEFT_OVER -> Role.LOSS;
            case ELSEWHERE -> Role.ELSEWHERE;
        };
    }

    private List<RiverRow> rows(River river) {
        Map<String, River.Node> nodes = new HashMap<>();
        river.nodes().forEach(node -> nodes.put(node.id(), node));
        List<RiverRow> rows = new ArrayList<>();
        for (River.Link link : river.links()) {
            River.Node from = nodes.get(link.from());
            River.Node to = nodes.get(link.to());
            rows.add(new RiverRow(
                    link.from() + "\n" + link.to() + "\n" + link.what(),
                    rows.size(),
                    from.name(),
                    link.what(),
                    to.kind() == River.Kind.MADE
                            ? to.name()
                            : to.name() + ", " + to.kind().inWords(),
                    text.apply(link.amount()),
                    link.amount(),
                    to.kind().end() ? link.to() : link.from()));
        }
        return rows;
    }

    private static List<String> notes(River river) {
        List<String> notes = new ArrayList<>();
        river.unweighed()
                .forEach(each -> notes.add("Not weighed: " + each.line() + " in " + each.recipe() + ". " + each.why()));
        notes.addAll(river.remarks());
        return notes;
    }

    /** What flows into a node of the picture and out of it. */
    Optional<Explanation> explain(RiverView view, String node) {
        return view.drawn().node(node).map(found -> explain(view.drawn(), found));
    }

    private Explanation explain(River river, River.Node node) {
        List<Explanation> parts = new ArrayList<>();
        List<River.Link> into = river.into(node.id());
        List<River.Link> outOf = river.outOf(node.id());
        if (!into.isEmpty()) {
            parts.add(side("Comes in", river, into, true));
        }
        if (!outOf.isEmpty()) {
            parts.add(side("Goes out", river, outOf, false));
        }
        Explanation whole = new Explanation(
                node.name(), text.apply(node.amount()), node.kind().inWords(), parts, Optional.empty());
        return subject(node).map(whole::about).orElse(whole);
    }

    private Explanation side(String title, River river, List<River.Link> links, boolean into) {
        return Explanation.of(
                title,
                "",
                links.stream()
                        .map(link -> Explanation.leaf(
                                river.node(into ? link.from() : link.to())
                                        .map(RiverModel::label)
                                        .orElse(link.what()),
                                text.apply(link.amount()),
                                ""))
                        .toList());
    }

    private static Optional<Subject> subject(River.Node node) {
        return switch (node.kind()) {
            case BOUGHT ->
                Optional.of(node.subject()).filter(id -> !id.isEmpty()).map(id -> new Subject("item", id));
            case MADE -> Optional.of(new Subject("recipe", node.subject()));
            default -> Optional.empty();
        };
    }
}
