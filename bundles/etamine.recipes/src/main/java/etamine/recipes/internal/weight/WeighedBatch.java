package etamine.recipes.internal.weight;

import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Ratio;
import etamine.recipes.River;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One batch of a recipe on the scale of a river: what goes in, what comes out, and the difference. A river has to join
 * what it draws, so where nothing is written it estimates and remarks on it: a fluid as water, a made thing as what went
 * into it. {@link BatchWeights} takes only what is written; where everything has a weight, both come to the same.
 */
public final class WeighedBatch {
    private final Recipe recipe;
    private final LineScale scale;
    private final List<Line> lines = new ArrayList<>();
    private final Map<String, Ratio> outputs = new LinkedHashMap<>();
    private final List<River.Unweighed> unweighed = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private Ratio in = Ratio.ZERO;
    private Ratio water = Ratio.ZERO;
    private Ratio out = Ratio.ZERO;

    /** One line: the item, what is taken of it and what of that goes in. */
    public record Line(Use use, Ratio before, Ratio after) {}

    public WeighedBatch(Recipe recipe, LineScale scale) {
        this.recipe = recipe;
        this.scale = scale;
        recipe.uses().forEach(this::take);
        takeWater();
        give();
    }

    private void take(Use use) {
        LineScale.Weight weight = scale.line(use);
        if (weight.known()) {
            lines.add(new Line(use, weight.before(), weight.after()));
            in = in.plus(weight.after());
        } else {
            unweighed.add(new River.Unweighed(recipe.name(), use.quantity() + " " + use.item(), weight.missing()));
        }
    }

    private void takeWater() {
        recipe.making()
                .absorbs()
                .ifPresent(taken -> scale.water(taken)
                        .ifPresentOrElse(
                                amount -> water = amount,
                                () -> unweighed.add(new River.Unweighed(
                                        recipe.name(), taken + " water", "Write the water as a weight or a volume."))));
    }

    /**
     * Fluids that nobody has weighed are taken to be as heavy as water, so that what boils away shows. Other outputs
     * that cannot be weighed together what the others leave; one of them alone can then be weighed.
     */
    private void give() {
        List<Make> open = new ArrayList<>();
        for (Make make : recipe.makes()) {
            LineScale.Weight weight = scale.output(recipe, make);
            Optional<Ratio> asWater = weight.known() ? Optional.empty() : scale.asWater(make.quantity());
            if (asWater.isPresent()) {
                outputs.merge(make.item(), asWater.get(), Ratio::plus);
                out = out.plus(asWater.get());
                scale.note(make.item(), make.quantity(), asWater.get());
                remarks.add("What " + make.quantity() + " of “" + recipe.name()
                        + "” weighs is not written; it is taken to be as heavy as water.");
            } else if (weight.known()) {
                outputs.merge(make.item(), weight.before(), Ratio::plus);
                out = out.plus(weight.before());
            } else {
                open.add(make);
            }
        }
        Ratio rest = in.plus(water).minus(out).max(Ratio.ZERO);
        for (int i = 0; i < open.size(); i++) {
            Make make = open.get(i);
            if (i == 0 && rest.signum() > 0) {
                outputs.merge(make.item(), rest, Ratio::plus);
                out = out.plus(rest);
                scale.note(make.item(), make.quantity(), rest);
                remarks.add("What " + make.quantity() + " of “" + recipe.name() + "” weighs is not written;"
                        + " it is taken as all that goes in.");
            } else {
                unweighed.add(new River.Unweighed(
                        recipe.name(),
                        make.quantity() + " " + make.item(),
                        "Write what " + make.quantity() + " of it weighs."));
            }
        }
    }

    public Recipe recipe() {
        return recipe;
    }

    public List<Line> lines() {
        return lines;
    }

    /** What one batch gives of each item, by item. */
    public Map<String, Ratio> outputs() {
        return outputs;
    }

    public Ratio water() {
        return water;
    }

    /** What comes in less what comes out: lost when more than nothing, not written down when less. */
    public Ratio difference() {
        return in.plus(water).minus(out);
    }

    public List<River.Unweighed> unweighed() {
        return unweighed;
    }

    public List<String> remarks() {
        return remarks;
    }
}
