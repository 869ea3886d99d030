package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import java.math.BigDecimal;
import java.time.Period;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;

/** The form's lines as text, and back. */
final class FieldText {
    private static final String PERCENT = "Write a percentage such as 13.5.";
    private static final String AMOUNT = "Write an amount such as 0.80.";

    private FieldText() {}

    static String of(Recipe recipe, Field field) {
        return switch (field) {
            case NAME -> recipe.name();
            case STATION -> recipe.making().station();
            case PORTION -> recipe.portion().map(QuantityText::formatExact).orElse("");
            case KEEPS -> recipe.keeps().map(FieldText::days).orElse("");
            case TESTED -> Integer.toString(recipe.tested());
            case ABSORBS ->
                recipe.making().absorbs().map(QuantityText::formatExact).orElse("");
            case REDUCES_TO -> recipe.making().reducesTo().map(Ratio::toString).orElse("");
            case NOTES -> recipe.notes();
            default -> recipe.menu().map(menu -> of(menu, field)).orElse("");
        };
    }

    private static String of(MenuPrice menu, Field field) {
        return switch (field) {
            case MENU_PRICE -> menu.price().toPlainString();
            case TAX -> unlessZero(menu.taxPercent());
            case Q_PERCENT -> unlessZero(menu.qFactorPercent());
            case Q_AMOUNT -> unlessZero(menu.qFactorAmount());
            case PACKAGING -> unlessZero(menu.packaging());
            default ->
                menu.targetFoodCostPercent().map(BigDecimal::toPlainString).orElse("");
        };
    }

    static Attempt read(Field field, String typed) {
        String text = typed.strip();
        try {
            return new Attempt.Edit(edit(field, text));
        } catch (MeasureException unclear) {
            return new Attempt.Bad(unclear.getMessage());
        }
    }

    private static UnaryOperator<Recipe> edit(Field field, String text) {
        return switch (field) {
            case NAME -> name(text);
            case STATION -> recipe -> recipe.withMaking(recipe.making().withStation(text));
            case PORTION -> portion(text);
            case KEEPS -> keeps(text);
            case TESTED -> tested(text);
            case ABSORBS -> absorbs(text);
            case REDUCES_TO -> reducesTo(text);
            case MENU_PRICE -> price(text);
            case TAX -> menu(text, PERCENT, MenuPrice::withTaxPercent);
            case Q_PERCENT -> menu(text, PERCENT, MenuPrice::withQFactorPercent);
            case Q_AMOUNT -> menu(text, AMOUNT, MenuPrice::withQFactorAmount);
            case PACKAGING -> menu(text, AMOUNT, MenuPrice::withPackaging);
            case TARGET -> target(text);
            case NOTES -> recipe -> recipe.withNotes(text);
        };
    }

    private static UnaryOperator<Recipe> name(String text) {
        if (text.isEmpty()) {
            throw new MeasureException("Give the recipe a name.");
        }
        return recipe -> recipe.withName(text);
    }

    private static UnaryOperator<Recipe> portion(String text) {
        Optional<Quantity> portion = quantity(text, "A portion must be more than zero.");
        return recipe -> recipe.withPortion(portion);
    }

    private static UnaryOperator<Recipe> absorbs(String text) {
        Optional<Quantity> water = quantity(text, "Write how much water it takes up, or leave it empty.");
        return recipe -> recipe.withMaking(recipe.making().withAbsorbs(water));
    }

    private static Optional<Quantity> quantity(String text, String sentence) {
        Optional<Quantity> quantity = text.isEmpty() ? Optional.empty() : Optional.of(QuantityText.parse(text));
        if (quantity.filter(each -> each.signum() <= 0).isPresent()) {
            throw new MeasureException(sentence);
        }
        return quantity;
    }

    private static UnaryOperator<Recipe> reducesTo(String text) {
        Optional<Ratio> share = text.isEmpty() ? Optional.empty() : Optional.of(share(text));
        return recipe -> recipe.withMaking(recipe.making().withReducesTo(share));
    }

    private static Ratio share(String text) {
        String sentence = "Write what is left of it, such as 1/4, 0.25 or 25 %.";
        try {
            Ratio share = text.endsWith("%")
                    ? Ratio.parse(text.substring(0, text.length() - 1).strip()).dividedBy(Ratio.of(100))
                    : Ratio.parse(text);
            if (share.signum() > 0 && share.compareTo(Ratio.ONE) <= 0) {
                return share;
            }
        } catch (IllegalArgumentException unclear) {
            throw new MeasureException(sentence);
        }
        throw new MeasureException(sentence);
    }

    private static String days(Period period) {
        Period whole = period.normalized();
        return whole.toTotalMonths() == 0 ? Integer.toString(whole.getDays()) : whole.toString();
    }

    private static UnaryOperator<Recipe> keeps(String text) {
        Optional<Period> days = text.isEmpty()
                ? Optional.empty()
                : Optional.of(Period.ofDays(whole(text, "Write how many days it keeps, such as 3.")));
        return recipe -> recipe.keeps().map(FieldText::days).equals(days.map(FieldText::days))
                ? recipe
                : recipe.withMaking(recipe.making().withKeeps(days));
    }

    private static UnaryOperator<Recipe> tested(String text) {
        int times = text.isEmpty() ? 0 : whole(text, "Write how often it was made with the same result, such as 3.");
        return recipe -> recipe.withStanding(recipe.standing().withTested(times));
    }

    private static int whole(String text, String sentence) {
        if (!text.matches("[0-9]{1,5}")) {
            throw new MeasureException(sentence);
        }
        return Integer.parseInt(text);
    }

    private static UnaryOperator<Recipe> price(String text) {
        if (text.isEmpty()) {
            return recipe -> recipe.withMenu(Optional.empty());
        }
        BigDecimal price = decimal(text, "Write a price such as 24.00.");
        return recipe -> recipe.withMenu(Optional.of(menu(recipe).withPrice(price)));
    }

    private static UnaryOperator<Recipe> menu(
            String text, String sentence, BiFunction<MenuPrice, BigDecimal, MenuPrice> change) {
        BigDecimal number = text.isEmpty() ? BigDecimal.ZERO : decimal(text, sentence);
        return recipe -> priced(recipe, menu -> change.apply(menu, number));
    }

    private static UnaryOperator<Recipe> target(String text) {
        Optional<BigDecimal> percent = text.isEmpty() ? Optional.empty() : Optional.of(decimal(text, PERCENT));
        return recipe -> priced(recipe, menu -> menu.withTarget(percent));
    }

    /** What belongs to a menu price needs one first. */
    private static Recipe priced(Recipe recipe, UnaryOperator<MenuPrice> change) {
        return recipe.menu()
                .map(menu -> recipe.withMenu(Optional.of(change.apply(menu))))
                .orElse(recipe);
    }

    private static MenuPrice menu(Recipe recipe) {
        return recipe.menu().orElse(new MenuPrice(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO));
    }

    private static String unlessZero(BigDecimal number) {
        return number.signum() == 0 ? "" : number.toPlainString();
    }

    static BigDecimal decimal(String text, String sentence) {
        String plain = text.replace("%", "").replace(',', '.').strip();
        if (!plain.matches("[0-9]{1,9}(\\.[0-9]{1,6})?")) {
            throw new MeasureException(sentence);
        }
        return new BigDecimal(plain);
    }
}
