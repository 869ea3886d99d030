package etamine.recipes.internal.river;

import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.recipes.River;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.RecipeGraph;
import etamine.recipes.internal.weight.LineScale;
import etamine.recipes.internal.weight.WeighedBatch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Follows one recipe down to what is bought: first every recipe it needs is weighed, each after what it uses; then what
 * is needed of each is followed from the recipe down, so that each is taken once with its whole need. Used once.
 */
final class RiverCourse {
    private final RecipeGraph graph;
    private final ItemView items;
    private final LineScale scale;
    private final Recipe last;
    private final Map<String, WeighedBatch> weighed = new LinkedHashMap<>();
    private final Map<String, Ratio> needs = new HashMap<>();
    private final Map<String, Ratio> batches = new HashMap<>();
    private final RiverBed bed;

    RiverCourse(RecipeGraph graph, ItemView items, LineScale scale, Recipe last) {
        this.graph = graph;
        this.items = items;
        this.scale = scale;
        this.last = last;
        this.bed = new RiverBed(items, scale.unit());
    }

    River run(Ratio times, Quantity gives) {
        List<Recipe> order = order();
        order.forEach(recipe -> weighed.put(recipe.id(), new WeighedBatch(recipe, scale)));
        batches.put(last.id(), times);
        for (int i = order.size() - 1; i >= 0; i--) {
            follow(weighed.get(order.get(i).id()));
        }
        for (Recipe recipe : order) {
            lay(weighed.get(recipe.id()));
        }
        List<River.Unweighed> unweighed = new ArrayList<>();
        Set<String> remarks = new LinkedHashSet<>();
        weighed.values().stream().filter(batch -> taken(batch).signum() > 0).forEach(batch -> {
            unweighed.addAll(batch.unweighed());
            remarks.addAll(batch.remarks());
        });
        return bed.river(last, gives, unweighed, List.copyOf(remarks));
    }

    /** Every recipe that the last one needs, each after those that make what it uses. What is in a loop is left out. */
    private List<Recipe> order() {
        Set<String> needed = new LinkedHashSet<>();
        List<Recipe> open = new ArrayList<>(List.of(last));
        for (int i = 0; i < open.size(); i++) {
            open.get(i)
                    .uses()
                    .forEach(use -> maker(use.item())
                            .filter(maker -> needed.add(maker.id()))
                            .ifPresent(open::add));
        }
        List<Recipe> order = new ArrayList<>(graph.inOrder().stream()
                .filter(recipe -> needed.contains(recipe.id()) && !recipe.id().equals(last.id()))
                .toList());
        order.add(last);
        return order;
    }

    private Optional<Recipe> maker(String item) {
        return graph.maker(item)
                .filter(maker -> !maker.id().equals(last.id()))
                .filter(maker -> graph.loopThrough(maker.id()).isEmpty());
    }

    private Ratio taken(WeighedBatch batch) {
        return batches.getOrDefault(batch.recipe().id(), Ratio.ZERO);
    }

    private void follow(WeighedBatch batch) {
        if (batch.recipe() != last) {
            batches.put(batch.recipe().id(), neediest(batch));
        }
        Ratio times = taken(batch);
        batch.lines()
                .forEach(line -> needs.merge(line.use().item(), line.before().times(times), Ratio::plus));
    }

    private Ratio neediest(WeighedBatch batch) {
        Ratio most = Ratio.ZERO;
        for (Map.Entry<String, Ratio> output : batch.outputs().entrySet()) {
            boolean own = maker(output.getKey())
                    .filter(maker -> maker.id().equals(batch.recipe().id()))
                    .isPresent();
            if (own && output.getValue().signum() > 0) {
                most = most.max(needs.getOrDefault(output.getKey(), Ratio.ZERO).dividedBy(output.getValue()));
            }
        }
        return most;
    }

    private void lay(WeighedBatch batch) {
        Ratio times = taken(batch);
        if (times.signum() <= 0) {
            return;
        }
        Recipe recipe = batch.recipe();
        String node = bed.made(recipe);
        for (WeighedBatch.Line line : batch.lines()) {
            String from = source(line.use().item());
            bed.flow(
                    from,
                    node,
                    line.use().item(),
                    line.after().min(line.before()).times(times));
            Ratio trimmed = line.before().minus(line.after()).times(times);
            if (trimmed.signum() > 0) {
                bed.leave(from, River.Kind.TRIM, line.use().item(), trimmed);
            } else {
                bed.enter(River.Kind.WATER, node, trimmed.negate());
            }
        }
        bed.enter(River.Kind.WATER, node, batch.water().times(times));
        Ratio difference = batch.difference().times(times);
        if (difference.signum() < 0) {
            bed.enter(River.Kind.UNWRITTEN, node, difference.negate());
        } else {
            River.Kind kind = recipe.kind() == Kind.DRINK ? River.Kind.SPILT : River.Kind.LOST;
            bed.leave(node, kind, recipe.name(), difference);
        }
        outputs(batch, node, times);
    }

    private String source(String item) {
        return maker(item)
                .filter(maker -> batches.getOrDefault(maker.id(), Ratio.ZERO).signum() > 0)
                .filter(maker -> weighed.get(maker.id()).outputs().containsKey(item))
                .map(bed::made)
                .orElseGet(() -> bed.bought(item));
    }

    /** What the recipe gives beyond what is needed of it here. */
    private void outputs(WeighedBatch batch, String node, Ratio times) {
        String main = last.makes().stream().findFirst().map(Make::item).orElse("");
        batch.outputs().forEach((item, each) -> {
            Ratio given = each.times(times);
            if (batch.recipe() == last && item.equals(main)) {
                bed.served(node, last, given);
                return;
            }
            boolean own = maker(item)
                    .filter(maker -> maker.id().equals(batch.recipe().id()))
                    .isPresent();
            Ratio rest = own ? given.minus(needs.getOrDefault(item, Ratio.ZERO)) : given;
            boolean used = !graph.usersOf(item).isEmpty();
            bed.leave(node, used ? River.Kind.ELSEWHERE : River.Kind.LEFT_OVER, item, rest);
        });
    }
}
