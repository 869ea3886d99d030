package etamine.costing.internal.state;

import etamine.costing.internal.engine.CompiledRecipe;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.recipe.MenuPrice;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The recipes on the menu that have a portion, by id, as one reckoning has them.
 *
 * @param byId the plates
 * @param list those of them that are not archived, in the same order, for going through all of them fast
 */
public record Plates(SortedMap<String, Plate> byId, List<Plate> list) {

    /**
     * One of them.
     *
     * @param recipe its recipe's id
     * @param place its recipe's place in the graph
     * @param menu how it is sold
     * @param portion what one portion costs, as the engine has it
     * @param labour the work in it, as the engine has it; not a number while work is not costed
     * @param cost its figures
     * @param complete whether nothing below it is missing
     * @param archived whether it is only kept and not cooked any more
     */
    public record Plate(
            String recipe,
            int place,
            MenuPrice menu,
            double portion,
            double labour,
            PlateCost cost,
            boolean complete,
            boolean archived) {}

    static Plates of(CostState state) {
        PlateMath math = new PlateMath(state.terms());
        SortedMap<String, Plate> plates = new TreeMap<>();
        for (int place = 0; place < state.order().size(); place++) {
            CompiledRecipe compiled = state.order().get(place);
            MenuPrice menu = compiled.recipe().menu().orElse(null);
            double portion = menu == null ? Double.NaN : compiled.portionOf(state.batch(place), true);
            if (menu != null && Math.abs(portion) <= Double.MAX_VALUE) {
                double labour = state.labour()
                        .map(work -> compiled.portionOf(work.batch(compiled.recipe()), false))
                        .orElse(Double.NaN);
                plates.put(
                        compiled.recipe().id(),
                        new Plate(
                                compiled.recipe().id(),
                                place,
                                menu,
                                portion,
                                labour,
                                math.of(menu, portion, labour),
                                state.batchComplete(place),
                                compiled.recipe().standing().archived()));
            }
        }
        return new Plates(
                Collections.unmodifiableSortedMap(plates),
                plates.values().stream().filter(plate -> !plate.archived()).toList());
    }
}
