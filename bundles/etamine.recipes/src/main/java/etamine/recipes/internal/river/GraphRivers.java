package etamine.recipes.internal.river;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Conversion;
import etamine.measures.Converter;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.River;
import etamine.recipes.Rivers;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import etamine.recipes.internal.MadeThings;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.weight.LineScale;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Rivers through the graph of the recipes on the shelf. */
@Component
public final class GraphRivers implements Rivers {
    private final RecipeShelf shelf;
    private final KnownItems known;
    private final MadeItems made;

    /** Rivers of the recipes on that shelf. */
    @Activate
    public GraphRivers(@Reference RecipeShelf shelf, @Reference KnownItems known, @Reference MadeItems made) {
        this.shelf = shelf;
        this.known = known;
        this.made = made;
    }

    @Override
    public River portion(Recipe recipe) {
        if (recipe.makes().isEmpty() || main(recipe).quantity().signum() <= 0) {
            return batch(recipe);
        }
        Quantity portion = Quantity.of(1, Unit.PORTION);
        Make main = main(recipe);
        Converter converter = Converter.of(
                MadeThings.portion(recipe),
                ItemView.of(known, made).find(main.item()).map(Item::measures).orElseGet(List::of));
        return converter.convert(portion, main.quantity().unit()) instanceof Conversion.Converted found
                ? river(recipe, found.quantity().dividedBy(main.quantity()), portion)
                : batch(recipe);
    }

    @Override
    public River batch(Recipe recipe) {
        if (recipe.makes().isEmpty()) {
            String remark = recipe.name() + " does not say what it makes; write its yield first.";
            Quantity nothing = Quantity.zero(Unit.PORTION);
            return new River(recipe.id(), recipe.name(), nothing, List.of(), List.of(), List.of(), List.of(remark));
        }
        return river(recipe, Ratio.ONE, main(recipe).quantity());
    }

    private static Make main(Recipe recipe) {
        return recipe.makes().get(0);
    }

    /** By weight, unless more of it can be measured by volume. */
    private River river(Recipe recipe, Ratio times, Quantity gives) {
        River byWeight = river(recipe, times, gives, Dimension.MASS);
        if (byWeight.unweighed().isEmpty()) {
            return byWeight;
        }
        River byVolume = river(recipe, times, gives, Dimension.VOLUME);
        return byVolume.unweighed().size() < byWeight.unweighed().size() ? byVolume : byWeight;
    }

    private River river(Recipe recipe, Ratio times, Quantity gives, Dimension dimension) {
        ItemView items = ItemView.of(known, made);
        LineScale scale = new LineScale(items, dimension);
        return new RiverCourse(shelf.graph(), items, scale, recipe).run(times, gives);
    }
}
