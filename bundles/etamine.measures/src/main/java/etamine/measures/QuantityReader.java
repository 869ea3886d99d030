package etamine.measures;

import java.util.function.Function;

/** Reads amounts with units: single, compound (2 lb 4 oz) and packed (6 x 1 l). */
final class QuantityReader {
    private static final String EXAMPLE = "such as 250 g, 1 1/2 cup or 6 x 1 l";

    private final NumberReader numbers;
    private final Function<String, Unit> ownWords;

    /** So many of an equal content, not yet judged. */
    private record Counted(Ratio count, Quantity content) {}

    /** A reader that takes any word it does not know for a unit of an ingredient's own. */
    QuantityReader(String text) {
        this(text, Unit::word);
    }

    QuantityReader(String text, Function<String, Unit> ownWords) {
        if (text.isBlank()) {
            throw new MeasureException("Write an amount and its unit, " + EXAMPLE + ".");
        }
        this.numbers = new NumberReader(text);
        this.ownWords = ownWords;
    }

    /** The whole text as a pack; one item when nothing is multiplied. */
    Pack pack() {
        Counted counted = counted();
        return new Pack(counted.count, counted.content);
    }

    /** The whole text as a quantity; a pack counts as its total. */
    Quantity quantity() {
        boolean negative = numbers.sign();
        Counted counted = counted();
        Quantity total = counted.content.times(counted.count);
        return negative ? total.negate() : total;
    }

    private Counted counted() {
        Ratio count = Ratio.ONE;
        Ratio amount = numbers.unsigned();
        while (numbers.times()) {
            count = count.times(amount);
            amount = numbers.unsigned();
        }
        return new Counted(count, compound(part(amount)));
    }

    private Quantity compound(Quantity first) {
        Quantity sum = first;
        Quantity last = first;
        while (!numbers.atEnd()) {
            Quantity next = part(numbers.unsigned());
            if (!next.unit().isLike(last.unit())
                    || next.unit().inBase().compareTo(last.unit().inBase()) >= 0) {
                throw new MeasureException("Write the larger unit first and both of one kind, such as 2 lb 4 oz, not "
                        + last.unit() + " and then " + next.unit() + ".");
            }
            sum = sum.plus(next);
            last = next;
        }
        return sum;
    }

    private Quantity part(Ratio amount) {
        String word = numbers.word();
        if (!numbers.atEnd()) {
            word = word.replaceFirst("(?:^|\\s+)(?:and|plus)$|\\s*[+&,]$", "");
        }
        if (word.isEmpty()) {
            throw new MeasureException("Add a unit after the number, " + EXAMPLE + ".");
        }
        if (word.matches("[xX\u00d7*](?:\\s.*)?")) {
            throw new MeasureException("Write a number after the x too, " + EXAMPLE + ".");
        }
        String unit = word;
        return new Quantity(amount, UnitWords.find(unit).orElseGet(() -> ownWords.apply(unit)));
    }
}
