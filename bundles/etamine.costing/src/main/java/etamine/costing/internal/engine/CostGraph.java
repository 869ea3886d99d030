package etamine.costing.internal.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Compiled recipes in topological order as flat arrays, so that a whole recompute is one pass over memory. Immutable;
 * items are numbered by this graph.
 */
public final class CostGraph {
    private final Map<String, Integer> numbers;
    private final int[] lineStart;
    private final int[] lineItem;
    private final double[] lineAmount;
    private final int[] outStart;
    private final int[] outItem;
    private final double[] outAmount;
    private final double[] outShare;
    private final double[] outCredit;
    private final boolean[] outDecides;
    private final boolean[] made;

    /** What a recompute found; arrays by item number and by recipe in graph order. */
    public record Figures(double[] unitCost, boolean[] complete, double[] batch, boolean[] batchComplete) {}

    /**
     * Lays the recipes out.
     *
     * @param order each after those that make what it uses
     * @param makers for each item made, the id of the recipe that decides its cost
     */
    public CostGraph(List<CompiledRecipe> order, Map<String, String> makers) {
        numbers = new HashMap<>();
        int recipes = order.size();
        int lines = order.stream().mapToInt(compiled -> compiled.lines().length).sum();
        int outs =
                order.stream().mapToInt(compiled -> compiled.outputs().length).sum();
        lineStart = new int[recipes + 1];
        outStart = new int[recipes + 1];
        lineItem = new int[lines];
        lineAmount = new double[lines];
        outItem = new int[outs];
        outAmount = new double[outs];
        outShare = new double[outs];
        outCredit = new double[outs];
        outDecides = new boolean[outs];
        for (int r = 0; r < recipes; r++) {
            take(order.get(r), r, makers);
        }
        made = new boolean[numbers.size()];
        for (int item : outItem) {
            made[item] = true;
        }
    }

    private void take(CompiledRecipe compiled, int r, Map<String, String> makers) {
        int line = lineStart[r];
        int out = outStart[r];
        int n = compiled.lines().length;
        int m = compiled.outputs().length;
        System.arraycopy(compiled.lines(), 0, lineAmount, line, n);
        System.arraycopy(compiled.outputs(), 0, outAmount, out, m);
        System.arraycopy(compiled.shares(), 0, outShare, out, m);
        System.arraycopy(compiled.credits(), 0, outCredit, out, m);
        for (int i = 0; i < n; i++) {
            lineItem[line + i] = number(compiled.recipe().uses().get(i).item());
        }
        for (int i = 0; i < m; i++) {
            String item = compiled.recipe().makes().get(i).item();
            outItem[out + i] = number(item);
            outDecides[out + i] = compiled.recipe().id().equals(makers.get(item));
        }
        lineStart[r + 1] = line + n;
        outStart[r + 1] = out + m;
    }

    private CostGraph(CostGraph like, Map<Integer, CompiledRecipe> changed) {
        numbers = like.numbers;
        lineStart = like.lineStart;
        lineItem = like.lineItem;
        outStart = like.outStart;
        outItem = like.outItem;
        outDecides = like.outDecides;
        made = like.made;
        lineAmount = like.lineAmount.clone();
        outAmount = like.outAmount.clone();
        outShare = like.outShare.clone();
        outCredit = like.outCredit.clone();
        changed.forEach(this::put);
    }

    /** The same graph with other amounts; the recipes at these places use and make the same things in the same order. */
    public CostGraph with(Map<Integer, CompiledRecipe> changed) {
        return changed.isEmpty() ? this : new CostGraph(this, changed);
    }

    private void put(int r, CompiledRecipe compiled) {
        int m = compiled.outputs().length;
        System.arraycopy(compiled.lines(), 0, lineAmount, lineStart[r], compiled.lines().length);
        System.arraycopy(compiled.outputs(), 0, outAmount, outStart[r], m);
        System.arraycopy(compiled.shares(), 0, outShare, outStart[r], m);
        System.arraycopy(compiled.credits(), 0, outCredit, outStart[r], m);
    }

    /** The places of the recipes that use an item, each once, in order. */
    public List<Integer> usersOf(int item) {
        List<Integer> users = new ArrayList<>();
        for (int r = 0; r + 1 < lineStart.length; r++) {
            for (int i = lineStart[r]; i < lineStart[r + 1]; i++) {
                if (lineItem[i] == item) {
                    users.add(r);
                    break;
                }
            }
        }
        return users;
    }

    /** How many bytes its arrays take. */
    long bytes() {
        long ints = 4L * (lineStart.length + lineItem.length + outStart.length + outItem.length);
        long doubles = 8L * (lineAmount.length + outAmount.length + outShare.length + outCredit.length);
        return ints + doubles + outDecides.length + made.length;
    }

    private int number(String item) {
        Integer known = numbers.get(item);
        if (known == null) {
            known = numbers.size();
            numbers.put(item, known);
        }
        return known;
    }

    /** The number of an item, or -1 if no recipe has it. */
    public int numberOf(String item) {
        return numbers.getOrDefault(item, -1);
    }

    /** Whether some recipe makes the item. */
    public boolean isMade(int number) {
        return made[number];
    }

    public Map<String, Integer> numbers() {
        return numbers;
    }

    /**
     * Rolls all costs up.
     *
     * @param prices cost of each bought item per reckoning unit; not a number where no price is known. Made items are
     *     ignored
     */
    public Figures compute(double[] prices) {
        double[] unit = new double[prices.length];
        boolean[] complete = new boolean[prices.length];
        for (int i = 0; i < prices.length; i++) {
            boolean known = !made[i] && !Double.isNaN(prices[i]);
            complete[i] = known;
            unit[i] = known ? prices[i] : 0;
        }
        int recipes = lineStart.length - 1;
        double[] batch = new double[recipes];
        boolean[] batchComplete = new boolean[recipes];
        for (int r = 0; r < recipes; r++) {
            double sum = 0;
            boolean all = true;
            for (int i = lineStart[r]; i < lineStart[r + 1]; i++) {
                double cost = lineAmount[i] * unit[lineItem[i]];
                if (cost == cost) {
                    sum += cost;
                    all &= complete[lineItem[i]];
                } else {
                    all = false;
                }
            }
            batch[r] = sum;
            batchComplete[r] = all;
            spread(r, unit, complete, sum, all);
        }
        return new Figures(unit, complete, batch, batchComplete);
    }

    /**
     * Rolls up something that is added at each recipe and goes with what it makes, such as work. Credited things carry
     * none of it.
     *
     * @param own what each recipe adds, in graph order
     * @return what one batch of each recipe carries
     */
    public double[] carried(double[] own) {
        double[] unit = new double[made.length];
        double[] batch = new double[own.length];
        for (int r = 0; r < own.length; r++) {
            batch[r] = own[r] + weighed(r, unit);
            for (int i = outStart[r]; i < outStart[r + 1]; i++) {
                if (outDecides[i]) {
                    unit[outItem[i]] = sound(batch[r] * outShare[i] / outAmount[i]);
                }
            }
        }
        return batch;
    }

    /** By how much each batch moves when one reckoning unit of a bought item costs one more. */
    public double[] slope(int item) {
        double[] unit = new double[made.length];
        double[] batch = new double[lineStart.length - 1];
        unit[item] = made[item] ? 0 : 1;
        for (int r = 0; r < batch.length; r++) {
            batch[r] = weighed(r, unit);
            for (int i = outStart[r]; batch[r] != 0 && i < outStart[r + 1]; i++) {
                if (outDecides[i]) {
                    unit[outItem[i]] = sound(batch[r] * outShare[i] / outAmount[i]);
                }
            }
        }
        return batch;
    }

    private double weighed(int r, double[] unit) {
        double sum = 0;
        for (int i = lineStart[r]; i < lineStart[r + 1]; i++) {
            double part = lineAmount[i] * unit[lineItem[i]];
            sum += part == part ? part : 0;
        }
        return sum;
    }

    private static double sound(double each) {
        return Math.abs(each) <= Double.MAX_VALUE ? each : 0;
    }

    /** Gives each thing made its credit or its share. */
    private void spread(int r, double[] unit, boolean[] complete, double sum, boolean all) {
        double rest = sum;
        for (int i = outStart[r]; i < outStart[r + 1]; i++) {
            rest -= outCredit[i];
        }
        for (int i = outStart[r]; i < outStart[r + 1]; i++) {
            int item = outItem[i];
            if (outDecides[i]) {
                double each = (outCredit[i] + rest * outShare[i]) / outAmount[i];
                boolean sound = Math.abs(each) <= Double.MAX_VALUE;
                unit[item] = sound ? each : 0;
                complete[item] = sound && (all || outShare[i] == 0);
            }
        }
    }
}
