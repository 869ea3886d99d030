package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import etamine.recipes.UseLines;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The small tables of the form as text, and back. Emptied rows go. */
final class TableText {
    private static final Pattern PRICE = Pattern.compile("([0-9]+(?:[.,][0-9]+)?)\\s*(?:/|per)\\s*(.+)");

    private final UseLines lines;
    private final ItemWords words;

    TableText(UseLines lines, ItemWords words) {
        this.lines = lines;
        this.words = words;
    }

    /** Reads one line used. */
    Attempt use(int row, List<String> cells) {
        if (isEmpty(cells)) {
            return new Attempt.Edit(recipe -> recipe.withUses(Rows.without(recipe.uses(), row)));
        }
        UseLines.Reading reading = lines.read(cells.get(0));
        if (reading instanceof UseLines.Reading.Clear clear) {
            return new Attempt.Edit(recipe -> recipe.withUses(Rows.with(recipe.uses(), row, clear.use())));
        }
        return new Attempt.Bad(((UseLines.Reading.Unclear) reading).text());
    }

    List<List<String>> makes(Recipe recipe) {
        return recipe.makes().stream()
                .map(make -> List.of(
                        words.name(make.item()),
                        QuantityText.formatExact(make.quantity()),
                        make.credit().map(TableText::price).orElse("")))
                .toList();
    }

    /** Reads one thing made: item, quantity, credit. */
    Attempt make(int row, List<String> cells) {
        if (isEmpty(cells)) {
            return new Attempt.Edit(recipe -> recipe.withMakes(Rows.without(recipe.makes(), row)));
        }
        if (cells.get(0).isEmpty()) {
            return new Attempt.Bad("Name what it makes.");
        }
        try {
            Quantity quantity = QuantityText.parse(cells.get(1).isEmpty() ? "0 g" : cells.get(1));
            if (quantity.isZero()) {
                return new Attempt.Bad("Write how much it makes, such as 380 g.");
            }
            Optional<UnitPrice> credit = credit(cells.get(2));
            String item = words.id(cells.get(0));
            Make typed = new Make(item, quantity, credit);
            return new Attempt.Edit(
                    recipe -> recipe.withMakes(Rows.with(recipe.makes(), row, keepingValue(recipe, row, typed))));
        } catch (MeasureException unclear) {
            return new Attempt.Bad(unclear.getMessage());
        }
    }

    private static Make keepingValue(Recipe recipe, int row, Make typed) {
        return row < recipe.makes().size()
                ? new Make(
                        typed.item(),
                        typed.quantity(),
                        typed.credit(),
                        recipe.makes().get(row).marketValue())
                : typed;
    }

    private static Optional<UnitPrice> credit(String text) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher parts = PRICE.matcher(text);
        if (!parts.matches()) {
            throw new MeasureException("Write a credit such as 1.00 / kg, or leave it empty.");
        }
        String per = parts.group(2);
        Quantity quantity = QuantityText.parse(Character.isDigit(per.charAt(0)) ? per : "1 " + per);
        return Optional.of(
                new UnitPrice(FieldText.decimal(parts.group(1), "Write a credit such as 1.00 / kg."), quantity));
    }

    private static String price(UnitPrice price) {
        boolean one = price.per().amount().equals(Ratio.ONE);
        return price.amount().toPlainString() + " / "
                + (one ? price.per().unit().symbol() : QuantityText.formatExact(price.per()));
    }

    static List<List<String>> steps(Recipe recipe) {
        return recipe.steps().stream()
                .map(step -> List.of(
                        step.text(),
                        minutes(step.hands()),
                        minutes(step.unattended()),
                        step.equipment(),
                        after(recipe, step)))
                .toList();
    }

    private static String minutes(Duration time) {
        return time.isZero() ? "" : Long.toString(time.toMinutes());
    }

    private static String after(Recipe recipe, Step step) {
        List<String> ids = recipe.steps().stream().map(Step::id).toList();
        return String.join(
                ", ",
                step.after().stream()
                        .map(id -> ids.contains(id) ? Integer.toString(ids.indexOf(id) + 1) : id)
                        .toList());
    }

    /** Reads one step: text, minutes of hands, minutes by itself, equipment, numbers of the steps before. */
    static Attempt step(int row, List<String> cells) {
        if (isEmpty(cells)) {
            return new Attempt.Edit(recipe -> recipe.withSteps(Rows.without(recipe.steps(), row)));
        }
        try {
            Duration hands = time(cells.get(1));
            Duration unattended = time(cells.get(2));
            return new Attempt.Edit(recipe ->
                    recipe.withSteps(Rows.with(recipe.steps(), row, step(recipe, row, cells, hands, unattended))));
        } catch (MeasureException unclear) {
            return new Attempt.Bad(unclear.getMessage());
        }
    }

    private static Step step(Recipe recipe, int row, List<String> cells, Duration hands, Duration unattended) {
        Optional<Step> old =
                row < recipe.steps().size() ? Optional.of(recipe.steps().get(row)) : Optional.empty();
        Duration keptHands = old.map(Step::hands)
                .filter(was -> minutes(was).equals(minutes(hands)))
                .orElse(hands);
        Duration keptRest = old.map(Step::unattended)
                .filter(was -> minutes(was).equals(minutes(unattended)))
                .orElse(unattended);
        List<String> after = Arrays.stream(cells.get(4).split(","))
                .map(String::strip)
                .filter(number -> !number.isEmpty())
                .map(number -> stepId(recipe, number))
                .toList();
        String id = old.map(Step::id).orElseGet(() -> freshId(recipe));
        return new Step(
                id,
                cells.get(0),
                keptHands,
                keptRest,
                cells.get(3),
                after,
                old.map(Step::temperature).orElse(""),
                old.map(Step::holds).orElse(Duration.ZERO),
                old.map(Step::station).orElse(""));
    }

    private static String stepId(Recipe recipe, String number) {
        boolean counted = number.matches("[0-9]{1,3}")
                && Integer.parseInt(number) >= 1
                && Integer.parseInt(number) <= recipe.steps().size();
        return counted ? recipe.steps().get(Integer.parseInt(number) - 1).id() : number;
    }

    private static String freshId(Recipe recipe) {
        List<String> ids = recipe.steps().stream().map(Step::id).toList();
        int number = ids.size() + 1;
        while (ids.contains(Integer.toString(number))) {
            number++;
        }
        return Integer.toString(number);
    }

    private static Duration time(String text) {
        if (text.isEmpty()) {
            return Duration.ZERO;
        }
        String plain = text.replaceAll("\\s*min(utes)?\\s*$", "");
        if (!plain.matches("[0-9]{1,5}")) {
            throw new MeasureException("Write minutes, such as 25.");
        }
        return Duration.ofMinutes(Long.parseLong(plain));
    }

    private static boolean isEmpty(List<String> cells) {
        return cells.stream().allMatch(String::isEmpty);
    }
}
