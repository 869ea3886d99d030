package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import java.math.BigDecimal;
import java.time.Period;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The form's lines as text, and back. */
final class FieldText {
    private FieldText() {}

    static String of(Recipe recipe, Field field) {
        Optional<MenuPrice> menu = recipe.menu();
        return switch (field) {
            case NAME -> recipe.name();
            case PORTION -> recipe.portion().map(QuantityText::formatExact).orElse("");
            case KEEPS -> recipe.keeps().map(FieldText::days).orElse("");
            case TESTED -> Integer.toString(recipe.tested());
            case MENU_PRICE ->
                menu.map(MenuPrice::price).map(BigDecimal::toPlainString).orElse("");
            case TAX -> menu.map(MenuPrice::taxPercent).map(FieldText::percent).orElse("");
            case Q_FACTOR ->
                menu.map(MenuPrice::qFactorPercent).map(FieldText::percent).orElse("");
            case NOTES -> recipe.notes();
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
            case PORTION -> portion(text);
            case KEEPS -> keeps(text);
            case TESTED -> tested(text);
            case MENU_PRICE -> price(text);
            case TAX -> tax(text);
            case Q_FACTOR -> qFactor(text);
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
        Optional<Quantity> portion = text.isEmpty() ? Optional.empty() : Optional.of(QuantityText.parse(text));
        if (portion.filter(Quantity::isZero).isPresent()) {
            throw new MeasureException("A portion must be more than zero.");
        }
        return recipe -> recipe.withPortion(portion);
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
        int times = text.isEmpty() ? 0 : whole(text, "Write how often it was tested, such as 3.");
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

    private static UnaryOperator<Recipe> tax(String text) {
        BigDecimal percent = text.isEmpty() ? BigDecimal.ZERO : decimal(text, "Write a percentage such as 13.5.");
        return recipe -> recipe.menu()
                .map(menu -> recipe.withMenu(Optional.of(menu.withTaxPercent(percent))))
                .orElse(recipe);
    }

    private static UnaryOperator<Recipe> qFactor(String text) {
        BigDecimal percent = text.isEmpty() ? BigDecimal.ZERO : decimal(text, "Write a percentage such as 2.");
        return recipe -> recipe.menu()
                .map(menu -> recipe.withMenu(Optional.of(menu.withQFactorPercent(percent))))
                .orElse(recipe);
    }

    private static MenuPrice menu(Recipe recipe) {
        return recipe.menu().orElse(new MenuPrice(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO));
    }

    private static String percent(BigDecimal percent) {
        return percent.signum() == 0 ? "" : percent.toPlainString();
    }

    static BigDecimal decimal(String text, String sentence) {
        String plain = text.replace("%", "").replace(',', '.').strip();
        if (!plain.matches("[0-9]{1,9}(\\.[0-9]{1,6})?")) {
            throw new MeasureException(sentence);
        }
        return new BigDecimal(plain);
    }
}
