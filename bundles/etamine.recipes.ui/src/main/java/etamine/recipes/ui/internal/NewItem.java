package etamine.recipes.ui.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.Dimension;
import etamine.measures.Equivalence;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A new ingredient, or a new preparation of one, as somebody fills it in while writing a recipe.
 *
 * @param missing what the line names
 * @param name the item's name
 * @param countIn its unit of stock, as text
 * @param price a written price such as {@code 2.10 / kg}; empty for none
 * @param preparation the preparation's name; empty for none
 * @param yield its yield in percent
 * @param weighs what one of the line's unit weighs; empty when not known
 * @param allergens what it contains, as words; empty when not known
 */
record NewItem(
        Missing missing,
        String name,
        String countIn,
        String price,
        String preparation,
        String yield,
        String weighs,
        String allergens) {

    static final List<String> COUNTED = List.of("kg", "l", "ea");

    private static Unit unit(String symbol) {
        return switch (symbol) {
            case "l" -> Unit.L;
            case "ea" -> Unit.EA;
            default -> Unit.KG;
        };
    }

    /** What to start from. */
    static NewItem of(Missing missing) {
        boolean prepared = missing.item().isPresent();
        return new NewItem(
                missing,
                prepared ? "" : capital(missing.name()),
                missing.countIn().symbol(),
                "",
                prepared ? missing.name() : missing.preparation(),
                "",
                "",
                "");
    }

    private static String capital(String name) {
        int first = name.offsetByCodePoints(0, 1);
        return name.substring(0, first).toUpperCase(Locale.ROOT) + name.substring(first);
    }

    /** The unit whose weight would help: that of the line where it is none of weight. */
    Optional<Unit> weighable() {
        return missing.quantity().map(Quantity::unit).filter(unit -> unit.dimension() != Dimension.MASS);
    }

    /** What is wrong with what was filled in, if anything. */
    Optional<String> problem() {
        try {
            if (missing.item().isEmpty()) {
                item();
            } else {
                prepared();
            }
            return Optional.empty();
        } catch (MeasureException unclear) {
            return Optional.of(unclear.getMessage());
        }
    }

    /** The item as filled in; its allergens are unknown unless they are written. */
    Item item() {
        if (name.isBlank()) {
            throw new MeasureException("Give the ingredient a name.");
        }
        Optional<UnitPrice> written = price.isBlank() ? Optional.empty() : Optional.of(unitPrice(price));
        if (weighs.isBlank()) {
            written.ifPresent(this::refuseUnweighed);
        }
        boolean plain = preparation.isBlank();
        return new Item(
                "new",
                name.strip(),
                "",
                false,
                "",
                Optional.empty(),
                unit(countIn),
                plain ? measures() : List.of(),
                plain ? List.of() : List.of(prepared()),
                AllergenEntry.read(allergens),
                written);
    }

    /** Pieces are counted without a weight, but a price for a weight then never reaches them, and nothing would say so. */
    private void refuseUnweighed(UnitPrice written) {
        weighable()
                .filter(unit -> unit.dimension() == Dimension.COUNT
                        && written.per().unit().dimension() == Dimension.MASS)
                .ifPresent(unit -> {
                    throw new MeasureException("The price is for " + written.per() + " and the line asks for " + unit
                            + ": write what 1 " + unit + " weighs, or a price such as 0.40 / " + unit + ".");
                });
    }

    /** The preparation as filled in. */
    Preparation prepared() {
        if (preparation.isBlank()) {
            throw new MeasureException("Give the preparation a name, such as peeled, large dice.");
        }
        BigDecimal percent = yield.isBlank()
                ? BigDecimal.ZERO
                : FieldText.decimal(yield.strip(), "Write the yield in percent, such as 74.");
        if (percent.signum() <= 0 || percent.compareTo(BigDecimal.valueOf(100)) > 0) {
            throw new MeasureException("Write how many percent of its weight are left after it is " + preparation
                    + ", such as 74; more than 100 cannot be.");
        }
        return new Preparation(preparation.strip(), Ratio.of(percent).dividedBy(Ratio.of(100)), measures());
    }

    private List<Equivalence> measures() {
        if (weighs.isBlank()) {
            return List.of();
        }
        Quantity weight = QuantityText.parse(weighs.strip());
        if (weight.signum() <= 0) {
            throw new MeasureException("Write what it weighs, such as 150 g, or leave it empty.");
        }
        return weighable()
                .map(unit -> List.of(new Equivalence(Quantity.of(1, unit), weight)))
                .orElseGet(List::of);
    }

    private static UnitPrice unitPrice(String text) {
        return TableText.unitPrice(text.strip()).orElseThrow();
    }
}
