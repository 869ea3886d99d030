package etamine.costing.internal.engine;

import etamine.bench.Bench;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleSupplier;

/**
 * A whole recompute of 10,000 recipes of 12 lines in four levels over 5,000 bought items, against the least that could do
 * it, the sums alone over primitive arrays, and against a recursive query and plain recursion over decimals. Engine and
 * floor take turns in one virtual machine.
 */
public final class RollUpBench implements Bench {
    private static final int BOUGHT = 5_000;
    private static final int RECIPES = 10_000;
    private static final int LINES = 12;
    private static final int LEVELS = 4;
    private static final int ROUNDS = 400;

    private final int[] items = new int[RECIPES * LINES];
    private final double[] amounts = new double[RECIPES * LINES];
    private final double[] prices = new double[BOUGHT + RECIPES];

    @Override
    public String name() {
        return "roll-up";
    }

    @Override
    public List<String> measure() throws SQLException {
        generate();
        CostGraph graph = graph();
        double[] numbered = new double[graph.numbers().size()];
        Arrays.fill(numbered, Double.NaN);
        for (int i = 0; i < BOUGHT; i++) {
            int number = graph.numberOf("i" + i);
            if (number >= 0) {
                numbered[number] = prices[i];
            }
        }
        double[] floor = new double[ROUNDS];
        double[] engine = new double[ROUNDS];
        double check = 0;
        for (int round = -ROUNDS; round < ROUNDS; round++) {
            int slot = Math.max(0, round);
            floor[slot] = millis(this::sums);
            engine[slot] = millis(() -> last(graph.compute(numbered).batch()));
            check = Math.max(
                    check, Math.abs(sums() - last(graph.compute(numbered).batch())));
        }
        List<String> lines = new ArrayList<>();
        lines.add(String.format(Locale.ROOT, "sums alone over primitive arrays: median %.3f ms", median(floor)));
        lines.add(String.format(Locale.ROOT, "whole recompute by the engine:    median %.3f ms", median(engine)));
        lines.add(String.format(
                Locale.ROOT, "ratio: %.2f (results differ by at most %.1e)", median(engine) / median(floor), check));
        lines.addAll(rivals(
                median(floor), median(engine), last(graph.compute(numbered).batch())));
        lines.add(String.format(
                Locale.ROOT,
                "memory of the compiled graph: %.2f MB of arrays, %d bytes a line",
                graph.bytes() / 1e6,
                graph.bytes() / (RECIPES * LINES)));
        return lines;
    }

    private List<String> rivals(double floor, double engine, double expected) throws SQLException {
        RollUpRivals rivals = new RollUpRivals(BOUGHT, LINES, items, amounts, prices);
        double[] query = rivals.byQuery(1);
        double[] decimals = rivals.byDecimals(5);
        double off = Math.max(Math.abs(query[0] - expected), Math.abs(decimals[0] - expected)) / expected;
        if (off > 1e-9) {
            throw new IllegalStateException("The rivals do not agree: they differ by " + off + ".");
        }
        return List.of(
                String.format(
                        Locale.ROOT,
                        "recursive query in SQLite: %.0f ms, %.0f times the engine, %.0f times the floor",
                        query[1],
                        query[1] / engine,
                        query[1] / floor),
                String.format(
                        Locale.ROOT,
                        "plain recursion over decimals: %.0f ms, %.0f times the engine, %.0f times the floor",
                        decimals[1],
                        decimals[1] / engine,
                        decimals[1] / floor));
    }

    private void generate() {
        Random random = new Random(7);
        int level = RECIPES / LEVELS;
        for (int i = 0; i < BOUGHT; i++) {
            prices[i] = 0.001 + random.nextInt(5_000) / 100_000.0;
        }
        for (int r = 0; r < RECIPES; r++) {
            int below = r / level * level;
            for (int line = 0; line < LINES; line++) {
                boolean made = below > 0 && line < 3;
                int at = r * LINES + line;
                items[at] = made ? BOUGHT + below - level + random.nextInt(level) : random.nextInt(BOUGHT);
                amounts[at] = 1 + random.nextInt(500);
            }
        }
    }

    /** The floor: what one batch of every recipe costs when each makes 1,000 g. */
    private double sums() {
        double[] unit = prices.clone();
        double sum = 0;
        for (int r = 0; r < RECIPES; r++) {
            sum = 0;
            for (int at = r * LINES; at < (r + 1) * LINES; at++) {
                sum += amounts[at] * unit[items[at]];
            }
            unit[BOUGHT + r] = sum / 1000;
        }
        return sum;
    }

    private CostGraph graph() {
        List<CompiledRecipe> order = new ArrayList<>();
        Map<String, String> makers = new HashMap<>();
        for (int r = 0; r < RECIPES; r++) {
            List<Use> uses = new ArrayList<>();
            for (int at = r * LINES; at < (r + 1) * LINES; at++) {
                uses.add(new Use(name(items[at]), Quantity.of((long) amounts[at], Unit.G), Optional.empty(), Basis.AP));
            }
            String id = name(BOUGHT + r);
            makers.put(id, id);
            Make make = new Make(id, Quantity.of(1000, Unit.G), Optional.empty());
            Recipe recipe = new Recipe(
                    id,
                    id,
                    Kind.COMPONENT,
                    uses,
                    List.of(make),
                    Optional.empty(),
                    Optional.empty(),
                    0,
                    List.of(),
                    Optional.empty(),
                    "");
            double[] lines = Arrays.copyOfRange(amounts, r * LINES, (r + 1) * LINES);
            order.add(new CompiledRecipe(
                    recipe,
                    lines,
                    new double[] {1000},
                    new double[] {1},
                    new double[] {0},
                    Double.NaN,
                    false,
                    List.of()));
        }
        return new CostGraph(order, makers);
    }

    private static String name(int item) {
        return item < BOUGHT ? "i" + item : "r" + (item - BOUGHT);
    }

    private static double last(double[] values) {
        return values[values.length - 1];
    }

    private static double millis(DoubleSupplier work) {
        long start = System.nanoTime();
        double result = work.getAsDouble();
        long end = System.nanoTime();
        if (Double.isNaN(result)) {
            throw new IllegalStateException("The roll-up gave no number.");
        }
        return (end - start) / 1e6;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
