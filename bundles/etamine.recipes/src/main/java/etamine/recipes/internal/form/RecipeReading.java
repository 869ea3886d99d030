package etamine.recipes.internal.form;

import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Making;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.PairedDrink;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads one entry of the section; what cannot be read is noted on the entry and left out. */
public final class RecipeReading {
    private final EntryReader entry;
    private final List<String> usePointers = new ArrayList<>();
    private final List<String> makePointers = new ArrayList<>();

    public RecipeReading(EntryReader entry) {
        this.entry = entry;
    }

    public Recipe recipe() {
        return new Recipe(
                entry.needed("id"),
                entry.needed("name"),
                entry.choice("kind", Kind.class).orElse(Kind.COMPONENT),
                uses(),
                makes(),
                positive("portion"),
                steps(),
                menu(),
                making(),
                TestForm.read(entry),
                drinks(),
                entry.text("notes"),
                Optional.of(entry.text("photo").strip()).filter(id -> !id.isEmpty()));
    }

    /** Where the lines that could be read stand in the entry. */
    public LinePointers pointers() {
        return new LinePointers(usePointers, makePointers);
    }

    private List<Use> uses() {
        List<Use> uses = new ArrayList<>();
        for (EntryReader line : entry.each("uses")) {
            String item = line.needed("item");
            Optional<Quantity> quantity = line.positive("quantity");
            Optional<String> as = Optional.of(line.text("as")).filter(name -> !name.isEmpty());
            Basis basis = line.choice("basis", Basis.class).orElse(as.isPresent() ? Basis.EP : Basis.AP);
            if (quantity.isPresent() && !item.isEmpty()) {
                uses.add(new Use(item, quantity.get(), as, basis, List.copyOf(line.words("or"))));
                usePointers.add(line.pointer(""));
            }
        }
        return uses;
    }

    private List<Make> makes() {
        List<Make> makes = new ArrayList<>();
        for (EntryReader line : entry.each("makes")) {
            String item = line.needed("item");
            Optional<Quantity> quantity = line.positive("quantity");
            Optional<UnitPrice> credit = line.price("credit");
            Optional<UnitPrice> value = line.price("marketValue");
            if (quantity.isPresent() && !item.isEmpty()) {
                makes.add(new Make(item, quantity.get(), credit, value));
                makePointers.add(line.pointer(""));
            }
        }
        return makes;
    }

    private Making making() {
        return new Making(
                entry.period("keeps"), entry.flag("wholeBatches"), absorbs(), reducesTo(), entry.text("station"));
    }

    private Optional<Quantity> absorbs() {
        return positive("absorbs").filter(water -> {
            boolean weighable =
                    water.unit().dimension() == Dimension.MASS || water.unit().dimension() == Dimension.VOLUME;
            if (!weighable) {
                entry.trouble("absorbs", "Write the water taken up as a weight or a volume, such as 400 g.");
            }
            return weighable;
        });
    }

    private Optional<Ratio> reducesTo() {
        return entry.ratio("reducesTo").filter(share -> {
            boolean sound = share.signum() > 0 && share.compareTo(Ratio.ONE) < 0;
            if (!sound) {
                entry.trouble(
                        "reducesTo",
                        "Write what is left over what went in, more than 0 and less than 1, such as 0.25.");
            }
            return sound;
        });
    }

    private Optional<Quantity> positive(String member) {
        return entry.has(member) ? entry.positive(member) : Optional.empty();
    }

    private List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        for (EntryReader step : entry.each("steps")) {
            String id = step.has("id") ? step.text("id") : Integer.toString(steps.size() + 1);
            steps.add(new Step(
                    id,
                    step.text("text"),
                    step.duration("hands"),
                    step.duration("unattended"),
                    step.text("equipment"),
                    List.copyOf(step.words("after")),
                    step.text("temperature"),
                    step.duration("holds"),
                    step.text("station")));
        }
        return steps;
    }

    private List<PairedDrink> drinks() {
        List<PairedDrink> drinks = new ArrayList<>();
        for (EntryReader drink : entry.each("drinks")) {
            String recipe = drink.needed("recipe");
            if (!recipe.isEmpty()) {
                drinks.add(new PairedDrink(recipe, drink.text("level")));
            }
        }
        return drinks;
    }

    private Optional<MenuPrice> menu() {
        BigDecimal tax = entry.decimal("taxPercent").orElse(BigDecimal.ZERO);
        BigDecimal share = entry.decimal("qFactorPercent").orElse(BigDecimal.ZERO);
        BigDecimal amount = entry.decimal("qFactorAmount").orElse(BigDecimal.ZERO);
        BigDecimal packaging = entry.decimal("packaging").orElse(BigDecimal.ZERO);
        Optional<BigDecimal> target = entry.decimal("targetFoodCostPercent");
        return entry.decimal("menuPrice").map(price -> new MenuPrice(price, tax, share, amount, packaging, target));
    }
}
