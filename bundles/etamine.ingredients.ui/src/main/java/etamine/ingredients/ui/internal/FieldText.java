package etamine.ingredients.ui.internal;

import etamine.ingredients.Ingredient;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.time.Period;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The form's lines as text, and back. */
final class FieldText {
    private static final Pattern PRICE = Pattern.compile("([0-9]+(?:[.,][0-9]+)?)\\s*(?:/|per|a)\\s*(.+)");

    private FieldText() {}

    static String of(Ingredient ingredient, Field field) {
        Item item = ingredient.item();
        return switch (field) {
            case NAME -> item.name();
            case GROUP -> item.group();
            case STORAGE -> item.storage();
            case KEEPS -> item.keeps().map(FieldText::days).orElse("");
            case COUNT_IN -> item.countIn().symbol();
            case PRICE -> item.writtenPrice().map(FieldText::price).orElse("");
            case NOTE -> ingredient.note();
            case SULPHITES ->
                item.allergens().sulphites().map(BigDecimal::toPlainString).orElse("");
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

    private static UnaryOperator<Ingredient> edit(Field field, String text) {
        return switch (field) {
            case NAME -> name(text);
            case GROUP -> ingredient -> ingredient.with(item -> item.withGroup(text));
            case STORAGE -> ingredient -> ingredient.with(item -> item.withStorage(text));
            case KEEPS -> keeps(text);
            case COUNT_IN -> countIn(text);
            case PRICE -> price(text);
            case NOTE -> ingredient -> ingredient.withNote(text);
            case SULPHITES -> sulphites(text);
        };
    }

    private static UnaryOperator<Ingredient> name(String text) {
        if (text.isEmpty()) {
            throw new MeasureException("Give the ingredient a name.");
        }
        return ingredient -> ingredient.with(item -> item.withName(text));
    }

    private static UnaryOperator<Ingredient> keeps(String text) {
        if (text.isEmpty()) {
            return ingredient -> ingredient.with(item -> item.withKeeps(Optional.empty()));
        }
        if (!text.matches("[0-9]{1,5}( ?d(ays?)?)?")) {
            throw new MeasureException("Write how many days it keeps, such as 10.");
        }
        Period days = Period.ofDays(Integer.parseInt(text.replaceAll("[^0-9]", "")));
        return ingredient -> ingredient.with(item -> item.withKeeps(
                item.keeps().filter(kept -> days(kept).equals(days(days))).or(() -> Optional.of(days))));
    }

    private static String days(Period period) {
        Period whole = period.normalized();
        return whole.toTotalMonths() == 0 ? Integer.toString(whole.getDays()) : whole.toString();
    }

    private static UnaryOperator<Ingredient> countIn(String text) {
        Unit unit = QuantityText.parse("1 " + text).unit();
        if (unit.system() == Unit.System.OWN) {
            throw new MeasureException(
                    "Count it in g, kg, ml, l, ea or another common unit; “" + text + "” can be a measure below.");
        }
        return ingredient -> ingredient.with(item -> item.withCountIn(unit));
    }

    private static String price(UnitPrice price) {
        boolean one = price.per().amount().equals(Ratio.ONE);
        return price.amount().toPlainString() + " / "
                + (one ? price.per().unit().symbol() : QuantityText.formatExact(price.per()));
    }

    private static UnaryOperator<Ingredient> price(String text) {
        if (text.isEmpty()) {
            return ingredient -> ingredient.with(item -> item.withPrice(Optional.empty()));
        }
        Matcher parts = PRICE.matcher(text);
        if (!parts.matches()) {
            throw new MeasureException("Write an amount and what it is for, such as 2.10 / kg.");
        }
        String per = parts.group(2);
        Quantity quantity = QuantityText.parse(per.matches("[0-9½¼¾⅓⅔].*") ? per : "1 " + per);
        UnitPrice price = new UnitPrice(new BigDecimal(parts.group(1).replace(',', '.')), quantity);
        return ingredient -> ingredient.with(item -> item.withPrice(Optional.of(price)));
    }

    private static UnaryOperator<Ingredient> sulphites(String text) {
        if (!text.isEmpty() && !text.matches("[0-9]{1,9}([.,][0-9]{1,6})?")) {
            throw new MeasureException("Write a number of mg/kg, such as 12, or nothing when nobody has measured.");
        }
        Optional<BigDecimal> amount =
                text.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(text.replace(',', '.')));
        return AllergenText.change(
                was -> new Allergens(was.contains(), was.mayContain(), was.known(), was.named(), amount));
    }
}
