package etamine.costing.internal.engine;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.costing.internal.larder.Larder;
import etamine.costing.internal.live.LiveCosts;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The engine against the plainest exact reckoning there is, on generated graphs. */
class CostGraphTest {
    private static final int GRAPHS = 250;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void agreesWithExactRecursionOnGeneratedGraphs(int seed) {
        Random random = new Random(seed);
        int compared = 0;
        for (int g = 0; g < GRAPHS; g++) {
            Larder larder = generated(random);
            LiveCosts costs = larder.costs();
            Map<String, Ratio> exact = new HashMap<>();
            for (Recipe recipe : larder.recipeList.inOrder()) {
                double engine = costs.state().batch(recipe);
                double plain = batch(recipe, larder, exact).doubleValue();
                assertThat(Math.abs(engine - plain)).isLessThanOrEqualTo(1e-9 * Math.max(1e-3, Math.abs(plain)));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(GRAPHS);
    }

    private static Larder generated(Random random) {
        Larder larder = new Larder();
        List<String> known = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            larder.bought("b" + i, random.nextInt(5_000) / 100.0 + "", (1 + random.nextInt(9)) + " kg");
            larder.prepared("b" + i, "trimmed", (1 + random.nextInt(100)) + "/100");
            known.add("b" + i);
        }
        for (int r = 0; r < 2 + random.nextInt(5); r++) {
            Larder.Writing writing = larder.recipe("r" + r);
            for (int line = 0; line < 1 + random.nextInt(4); line++) {
                String item = known.get(random.nextInt(known.size()));
                String quantity = (1 + random.nextInt(2_000)) + " g";
                if (item.startsWith("b") && random.nextBoolean()) {
                    writing.usesTrimmed(quantity, item, "trimmed");
                } else {
                    writing.uses(quantity, item);
                }
            }
            for (int out = 0; out < 1 + random.nextInt(3); out++) {
                String quantity = (100 + random.nextInt(3_000)) + " g";
                if (out > 0 && random.nextBoolean()) {
                    writing.makes(quantity, "m" + r + out, random.nextInt(300) / 100.0 + "", "1 kg");
                } else {
                    writing.makes(quantity, "m" + r + out);
                }
                known.add("m" + r + out);
            }
            writing.done();
        }
        return larder;
    }

    private static Ratio batch(Recipe recipe, Larder larder, Map<String, Ratio> perGram) {
        Ratio sum = Ratio.ZERO;
        for (Use use : recipe.uses()) {
            sum = sum.plus(perGram(use.item(), larder, perGram).times(bought(use, larder)));
        }
        return sum;
    }

    private static Ratio bought(Use use, Larder larder) {
        Ratio grams = use.quantity().in(Unit.G).amount();
        return use.as().isEmpty()
                ? grams
                : grams.dividedBy(larder.itemList
                        .find(use.item())
                        .orElseThrow()
                        .preparations()
                        .get(0)
                        .yield());
    }

    private static Ratio perGram(String item, Larder larder, Map<String, Ratio> perGram) {
        Ratio known = perGram.get(item);
        if (known == null) {
            known = larder.recipeList
                    .maker(item)
                    .map(maker -> share(item, maker, larder, perGram))
                    .orElseGet(() -> larder.itemList
                            .find(item)
                            .orElseThrow()
                            .writtenPrice()
                            .orElseThrow()
                            .cost(Quantity.of(1, Unit.G)));
            perGram.put(item, known);
        }
        return known;
    }

    private static Ratio share(String item, Recipe maker, Larder larder, Map<String, Ratio> perGram) {
        Ratio rest = batch(maker, larder, perGram);
        Ratio weight = Ratio.ZERO;
        for (Make make : maker.makes()) {
            if (make.credit().isPresent()) {
                Ratio value = make.credit().get().cost(make.quantity());
                if (make.item().equals(item)) {
                    return value.dividedBy(make.quantity().in(Unit.G).amount());
                }
                rest = rest.minus(value);
            } else {
                weight = weight.plus(make.quantity().in(Unit.G).amount());
            }
        }
        return rest.dividedBy(weight);
    }
}
