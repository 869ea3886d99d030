package etamine.recipes.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Converter;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.Scaled;
import etamine.recipes.Scaling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Scales by an exact fraction: the amount wanted over the amount one batch makes. */
@Component
public final class ExactScaling implements Scaling {
    private static final Ratio LARGE = Ratio.of(2);
    private static final Ratio SMALL = Ratio.of(1, 2);

    private final RecipeShelf shelf;
    private final KnownItems known;
    private final MadeItems made;

    /** Scales the recipes on that shelf. */
    @Activate
    public ExactScaling(@Reference RecipeShelf shelf, @Reference KnownItems known, @Reference MadeItems made) {
        this.shelf = shelf;
        this.known = known;
        this.made = made;
    }

    @Override
    public Scaled to(String id, Quantity amount) {
        Recipe recipe = shelf.graph().recipes().get(id);
        if (recipe == null) {
            return new Scaled.Impossible("There is no recipe “" + id + "”; the verb recipes lists them all.");
        }
        if (recipe.makes().isEmpty()) {
            return new Scaled.Impossible(recipe.name() + " does not say what it makes; write its yield first.");
        }
        if (amount.signum() <= 0) {
            return new Scaled.Impossible("Scale to more than zero, such as 3 l.");
        }
        Make main = recipe.makes().get(0);
        Conversion wanted =
                converter(recipe, main.item()).convert(amount, main.quantity().unit());
        if (wanted instanceof Conversion.Converted found) {
            return scaled(recipe, found.quantity().dividedBy(main.quantity()));
        }
        return new Scaled.Impossible(recipe.name() + " makes " + main.quantity() + ". "
                + (amount.unit().equals(Unit.PORTION)
                        ? "Write the size of its portion."
                        : ((Conversion.Missing) wanted).text()));
    }

    @Override
    public Scaled forCovers(String recipe, Ratio covers) {
        return to(recipe, new Quantity(covers, Unit.PORTION));
    }

    private Converter converter(Recipe recipe, String item) {
        return Converter.of(
                MadeThings.portion(recipe),
                ItemView.of(known, made).find(item).map(Item::measures).orElseGet(List::of));
    }

    private Scaled scaled(Recipe recipe, Ratio factor) {
        List<String> remarks = new ArrayList<>();
        if (factor.compareTo(LARGE) >= 0 || factor.compareTo(SMALL) <= 0) {
            remarks.add("Everything is multiplied alike: taste salt, spices and leavening, and watch times and pans.");
        }
        return new Scaled.Batch(times(recipe, factor), factor, factor.ceil(), remarks);
    }

    @Override
    public Recipe times(Recipe recipe, Ratio factor) {
        List<Use> uses = recipe.uses().stream()
                .map(use -> use.withQuantity(use.quantity().times(factor)))
                .toList();
        List<Make> makes = recipe.makes().stream()
                .map(make -> make.withQuantity(make.quantity().times(factor)))
                .toList();
        Optional<Quantity> absorbs = recipe.making().absorbs().map(water -> water.times(factor));
        return recipe.withUses(uses).withMakes(makes).withMaking(recipe.making().withAbsorbs(absorbs));
    }
}
