package etamine.recipes.internal.scale;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Conversion;
import etamine.measures.Converter;
import etamine.measures.MeasureException;
import etamine.measures.MeasureStyle;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.Filled;
import etamine.recipes.Practical;
import etamine.recipes.Scaled;
import etamine.recipes.Scaling;
import etamine.recipes.Vessel;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import etamine.recipes.internal.MadeThings;
import etamine.recipes.internal.RecipeShelf;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Scales by an exact fraction: the amount wanted over the amount one batch makes. */
@Component
public final class ExactScaling implements Scaling {
    private static final int MOST_BATCHES = 1_000_000;

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
        return scaled(id, recipe -> enough(recipe, factor(recipe, amount), List.of()));
    }

    @Override
    public Scaled forCovers(String recipe, Ratio covers) {
        return to(recipe, new Quantity(covers, Unit.PORTION));
    }

    @Override
    public Scaled forVessels(String id, List<Filled> vessels) {
        return scaled(id, recipe -> {
            Quantity volume = Filled.volume(vessels);
            List<String> reasons = new ArrayList<>();
            vessels.forEach(each -> reasons.add(said(each)));
            if (vessels.stream().anyMatch(each -> each.vessel().nominal())) {
                reasons.add(Vessel.CAUTION);
            }
            return enough(recipe, factor(recipe, volume), reasons);
        });
    }

    private static String said(Filled filled) {
        String level = filled.level().equals(Ratio.ONE)
                ? "filled to the brim"
                : "filled to "
                        + filled.level()
                                .times(Ratio.of(100))
                                .toDecimal(1, RoundingMode.HALF_UP)
                                .stripTrailingZeros()
                                .toPlainString()
                        + " %";
        return filled.count() + " x " + filled.vessel().name() + ", " + level + ", take " + shown(filled.volume())
                + ".";
    }

    @Override
    public Scaled fromOnHand(String id, Map<String, Quantity> have) {
        return scaled(id, recipe -> {
            OnHandLimit limit = OnHandLimit.of(recipe, have, ItemView.of(known, made));
            Ratio factor = recipe.making().whole() ? Ratio.of(limit.batches().floor()) : limit.batches();
            if (factor.isZero()) {
                OnHandLimit.Enough scarce = limit.each().get(0);
                throw new MeasureException(shown(scarce.have()) + " "
                        + scarce.item().name() + " is not enough for "
                        + (recipe.making().whole() ? "one whole batch of " : "any ") + recipe.name()
                        + "; get more of it, or make something else.");
            }
            List<String> reasons = new ArrayList<>();
            limit.each().forEach(each -> reasons.add(said(each, reasons.isEmpty())));
            return batch(recipe, factor, limit.batches(), reasons);
        });
    }

    private static String said(OnHandLimit.Enough enough, boolean limits) {
        return (limits ? "The limit is " : "There would be enough ")
                + enough.item().name() + ": "
                + shown(enough.have()) + (limits ? " are enough for " : " for ")
                + enough.batches()
                        .toDecimal(2, RoundingMode.DOWN)
                        .stripTrailingZeros()
                        .toPlainString()
                + " batches.";
    }

    private Scaled scaled(String id, Function<Recipe, Scaled> work) {
        Recipe recipe = shelf.graph().recipes().get(id);
        if (recipe == null) {
            return new Scaled.Impossible("There is no recipe “" + id + "”; the verb recipes lists them all.");
        }
        if (recipe.makes().isEmpty()) {
            return new Scaled.Impossible(recipe.name() + " does not say what it makes; write its yield first.");
        }
        try {
            return work.apply(recipe);
        } catch (MeasureException impossible) {
            return new Scaled.Impossible(impossible.getMessage());
        }
    }

    /** The amount over what one batch gives of the first thing made. */
    private Ratio factor(Recipe recipe, Quantity amount) {
        if (amount.signum() <= 0) {
            throw new MeasureException("Scale to more than zero, such as 3 l.");
        }
        Make main = recipe.makes().get(0);
        Conversion wanted =
                converter(recipe, main.item()).convert(amount, main.quantity().unit());
        if (wanted instanceof Conversion.Converted found) {
            return found.quantity().dividedBy(main.quantity());
        }
        throw new MeasureException(recipe.name() + " makes " + main.quantity() + ". "
                + (amount.unit().equals(Unit.PORTION)
                        ? "Write the size of its portion."
                        : ((Conversion.Missing) wanted).text()));
    }

    private Converter converter(Recipe recipe, String item) {
        return Converter.of(
                MadeThings.portion(recipe),
                ItemView.of(known, made).find(item).map(Item::measures).orElseGet(List::of));
    }

    private Scaled enough(Recipe recipe, Ratio asked, List<String> reasons) {
        if (!recipe.making().whole()) {
            return batch(recipe, asked, asked, reasons);
        }
        List<String> why = new ArrayList<>(reasons);
        if (!asked.isWhole()) {
            why.add(recipe.name() + " is only made in whole batches, so there is more than was asked for.");
        }
        return batch(recipe, Ratio.of(asked.ceil()), asked, why);
    }

    private Scaled batch(Recipe recipe, Ratio factor, Ratio asked, List<String> reasons) {
        if (factor.compareTo(Ratio.of(MOST_BATCHES)) > 0) {
            throw new MeasureException("That is more than a million batches; check the amount.");
        }
        Recipe times = times(recipe, factor);
        return new Scaled.Batch(
                times,
                factor,
                asked,
                factor.ceil(),
                times.uses().stream().map(use -> practical(use.quantity())).toList(),
                times.makes().stream().map(make -> practical(make.quantity())).toList(),
                reasons,
                ScalingRemarks.of(recipe, factor, ItemView.of(known, made)));
    }

    @Override
    public Recipe times(Recipe recipe, Ratio factor) {
        Optional<Quantity> absorbs = recipe.making().absorbs().map(water -> water.times(factor));
        return recipe.withUses(recipe.uses().stream()
                        .map(use -> use.withQuantity(use.quantity().times(factor)))
                        .toList())
                .withMakes(recipe.makes().stream()
                        .map(make -> make.withQuantity(make.quantity().times(factor)))
                        .toList())
                .withMaking(recipe.making().withAbsorbs(absorbs));
    }

    @Override
    public Practical practical(Quantity exact) {
        return KitchenSteps.of(exact);
    }

    private static String shown(Quantity quantity) {
        return QuantityText.format(quantity, MeasureStyle.METRIC);
    }
}
