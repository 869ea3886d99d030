package etamine.ingredients.internal;

import etamine.base.Problem;
import etamine.ingredients.Change;
import etamine.ingredients.Ingredient;
import etamine.ingredients.IngredientList;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemStarter;
import etamine.kitchen.item.Preparation;
import etamine.measures.Equivalence;
import etamine.measures.MeasureException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Ingredients that somebody names while writing a recipe. */
@Component
public final class StartedIngredients implements ItemStarter {
    private final IngredientList list;

    /** Adds to that list. */
    @Activate
    public StartedIngredients(@Reference IngredientList list) {
        this.list = list;
    }

    @Override
    public String start(Item wanted) {
        String id = list.freshId(wanted.name());
        Item item = new Item(
                id,
                wanted.name(),
                wanted.group(),
                false,
                wanted.storage(),
                wanted.keeps(),
                wanted.countIn(),
                wanted.measures(),
                wanted.preparations(),
                wanted.allergens(),
                wanted.writtenPrice(),
                wanted.diet());
        done(list.save(new Ingredient(item, Map.of()), 0));
        return id;
    }

    @Override
    public void prepare(String id, Preparation preparation) {
        long revision = list.revision(id);
        Ingredient now = listed(id, "its preparation");
        List<Preparation> preparations = new ArrayList<>(now.item().preparations());
        preparations.removeIf(each -> each.name().equals(preparation.name()));
        preparations.add(preparation);
        done(list.save(now.withPreparations(preparations, now.yields()), revision));
    }

    @Override
    public void measure(String id, Equivalence measure) {
        long revision = list.revision(id);
        Ingredient now = listed(id, "its measures");
        List<Equivalence> measures = new ArrayList<>(now.item().measures());
        measures.add(measure);
        done(list.save(now.with(item -> item.withMeasures(measures)), revision));
    }

    private Ingredient listed(String id, String what) {
        return list.find(id)
                .orElseThrow(() -> new MeasureException(
                        "“" + id + "” is not on the ingredient list; write " + what + " where it comes from."));
    }

    private static void done(Change change) {
        if (change instanceof Change.Refused refused) {
            throw new MeasureException(
                    refused.problems().stream().map(Problem::text).collect(Collectors.joining(" ")));
        }
    }
}
