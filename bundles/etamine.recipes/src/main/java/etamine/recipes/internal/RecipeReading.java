package etamine.recipes.internal;

import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads one entry of the section; what cannot be read is noted on the entry and left out. */
final class RecipeReading {
    private final EntryReader entry;
    private final List<String> usePointers = new ArrayList<>();
    private final List<String> makePointers = new ArrayList<>();

    RecipeReading(EntryReader entry) {
        this.entry = entry;
    }

    Recipe recipe() {
        return new Recipe(
                entry.needed("id"),
                entry.needed("name"),
                entry.choice("kind", Kind.class).orElse(Kind.COMPONENT),
                uses(),
                makes(),
                entry.has("portion") ? entry.positive("portion") : Optional.empty(),
                entry.period("keeps"),
                entry.whole("tested", 0),
                steps(),
                menu(),
                entry.text("notes"));
    }

    /** Where the lines that could be read stand in the entry. */
    LinePointers pointers() {
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
                uses.add(new Use(item, quantity.get(), as, basis));
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
            if (quantity.isPresent() && !item.isEmpty()) {
                makes.add(new Make(item, quantity.get(), credit));
                makePointers.add(line.pointer(""));
            }
        }
        return makes;
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
                    List.copyOf(step.words("after"))));
        }
        return steps;
    }

    private Optional<MenuPrice> menu() {
        BigDecimal tax = entry.decimal("taxPercent").orElse(BigDecimal.ZERO);
        BigDecimal qFactor = entry.decimal("qFactorPercent").orElse(BigDecimal.ZERO);
        return entry.decimal("menuPrice").map(price -> new MenuPrice(price, tax, qFactor));
    }
}
