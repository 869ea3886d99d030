package etamine.costing.internal.trial;

import etamine.costing.Experiment;
import etamine.costing.PriceChange;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.util.List;

/** Experiments as they are typed on the console. */
final class ExperimentWords {
    static final String FORMS = "price:ITEM=+14% or price:ITEM=\"4.67 / 1 l\", yield:ITEM/PREPARATION=0.70,"
            + " gives:RECIPE=\"350 g\", portion:RECIPE=\"80 g\", line:RECIPE/2=\"140 g\", menu:RECIPE=26.00";

    private ExperimentWords() {}

    /** All changes together; an {@link IllegalArgumentException} with a sentence for what cannot be understood. */
    static Experiment read(List<String> words) {
        Experiment experiment = Experiment.none();
        for (String word : words) {
            experiment = with(experiment, word);
        }
        return experiment;
    }

    private static Experiment with(Experiment experiment, String word) {
        int colon = word.indexOf(':');
        int equals = word.lastIndexOf('=');
        if (colon < 1 || equals < colon + 2 || equals == word.length() - 1) {
            throw new IllegalArgumentException("“" + word + "” is not a change; write one such as " + FORMS + ".");
        }
        String of = word.substring(colon + 1, equals);
        String to = word.substring(equals + 1).strip();
        return switch (word.substring(0, colon)) {
            case "price" -> experiment.withPrice(of, price(to));
            case "yield" -> experiment.withYield(before(of), after(of), Ratio.parse(to));
            case "gives" -> experiment.withGives(of, Quantity.parse(to));
            case "portion" -> experiment.withPortion(of, Quantity.parse(to));
            case "line" -> experiment.withLine(before(of), place(after(of)), Quantity.parse(to));
            case "menu" -> experiment.withMenuPrice(of, amount(to));
            default ->
                throw new IllegalArgumentException(
                        "“" + word.substring(0, colon) + "” cannot be changed; write one such as " + FORMS + ".");
        };
    }

    private static PriceChange price(String text) {
        if (text.endsWith("%")) {
            BigDecimal percent = decimal(text.substring(0, text.length() - 1).strip(), text);
            if (percent.compareTo(BigDecimal.valueOf(-100)) < 0) {
                throw new IllegalArgumentException("A price cannot fall by more than 100 %.");
            }
            return PriceChange.by(percent);
        }
        int slash = text.indexOf('/');
        if (slash < 1) {
            throw new IllegalArgumentException(
                    "“" + text + "” is not a price; write a percentage such as +14% or a price such as 4.67 / 1 l.");
        }
        return PriceChange.to(new UnitPrice(
                amount(text.substring(0, slash).strip()),
                Quantity.parse(text.substring(slash + 1).strip())));
    }

    private static BigDecimal amount(String text) {
        BigDecimal amount = decimal(text, text);
        if (amount.signum() < 0) {
            throw new IllegalArgumentException("“" + text + "” is less than nothing; write an amount such as 26.00.");
        }
        return amount;
    }

    private static BigDecimal decimal(String text, String whole) {
        if (!text.matches("[+-]?[0-9]{1,12}(\\.[0-9]{1,6})?")) {
            throw new IllegalArgumentException("“" + whole + "” is not a number; write digits and a point.");
        }
        return new BigDecimal(text);
    }

    private static String before(String pair) {
        return pair.substring(0, slash(pair));
    }

    private static String after(String pair) {
        return pair.substring(slash(pair) + 1);
    }

    private static int slash(String pair) {
        int slash = pair.indexOf('/');
        if (slash < 1 || slash == pair.length() - 1) {
            throw new IllegalArgumentException(
                    "“" + pair + "” needs a stroke between what is changed and its part, such as celeriac/peeled.");
        }
        return slash;
    }

    private static int place(String text) {
        if (!text.matches("[1-9][0-9]{0,4}")) {
            throw new IllegalArgumentException("“" + text + "” is not the number of a line; the first one is 1.");
        }
        return Integer.parseInt(text) - 1;
    }
}
