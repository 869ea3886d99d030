package etamine.recipes.internal.line;

import etamine.kitchen.item.Item;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Unit;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Amounts as they stand in a line, with the unit words of the item they are of. */
final class TypedAmount {
    private static final String NUMBER =
            "(?:[0-9]+\\s+[0-9]+/[0-9]+|[0-9]+/[0-9]+|[0-9]*[.,]?[0-9]+(?:\\s?[\u00bc-\u00be\u2150-\u215e])?|[\u00bc-\u00be\u2150-\u215e])";
    private static final Pattern BARE = Pattern.compile(NUMBER);
    /** What the exchange form can hold. */
    private static final Pattern KEPT = Pattern.compile(
            "([0-9]{1,12} [0-9]{1,6}/[0-9]{1,6}|[0-9]{1,12}/[0-9]{1,6}|[0-9]{1,12}(\\.[0-9]{1,9})?) .*");

    private static final Pattern RANGE = Pattern.compile(
            "^(" + NUMBER + ")(?:\\s*[-\u2010-\u2015]\\s*|\\s+(?:to|or)\\s+)(" + NUMBER + ")(?=\\s|\\p{L}|$)");
    /** Words of units, singular and plural, one by one. */
    private static final Set<String> UNITS = Stream.of(
                    "mg g kg oz lb ml cl dl l tsp tbsp tbs floz cup pt qt gal ea dozen doz portion milligram gram gramme"
                            + " kilogram kilo ounce pound millilitre milliliter centilitre decilitre litre liter ltr"
                            + " teaspoon tablespoon pint quart gallon each piece pc pce ptn serving tsp_m tbsp_m cup_m"
                            + " floz_imp pt_imp qt_imp gal_imp")
            .flatMap(words -> Stream.of(words.split(" ")))
            .flatMap(word -> Stream.of(word, word + "s"))
            .collect(Collectors.toUnmodifiableSet());
    /** What may stand between them. */
    private static final Set<String> BETWEEN =
            Set.of("fl", "fluid", "metric", "imperial", "x", "\u00d7", "and", "plus", "+", "&");

    private TypedAmount() {}

    /** Whether an amount may begin so. */
    static boolean mayBegin(String text) {
        if (text.isEmpty()) {
            return false;
        }
        char first = text.charAt(0);
        return first >= '0' && first <= '9'
                || BARE.matcher(String.valueOf(first)).matches()
                || first == '.';
    }

    /** Two amounts with something between them that leaves it open which is meant. */
    static Optional<Matcher> range(String text) {
        Matcher found = RANGE.matcher(text);
        return found.find() ? Optional.of(found) : Optional.empty();
    }

    /** Whether a text is a number with at most one word behind it, or has only units that everybody knows. */
    static boolean isPossible(String text, Set<String> longWords) {
        if (!mayBegin(text)) {
            return false;
        }
        Matcher number = BARE.matcher(text);
        String rest = number.lookingAt() ? text.substring(number.end()).strip() : text;
        return rest.indexOf(' ') < 0 || longWords.contains(rest.toLowerCase(Locale.ROOT)) || isKnown(text);
    }

    /** Whether a text is an amount in units that everybody knows. */
    static boolean isKnown(String text) {
        if (!Stream.of(text.split(" ")).allMatch(TypedAmount::mayBelong)) {
            return false;
        }
        try {
            return of(text, Set.of()).unit().system() != Unit.System.OWN;
        } catch (MeasureException unreadable) {
            return false;
        }
    }

    /** Spares most lines the attempt, which is dear when it fails. */
    private static boolean mayBelong(String word) {
        String plain = word.toLowerCase(Locale.ROOT).replace(".", "");
        return mayBegin(word) || UNITS.contains(plain) || BETWEEN.contains(plain);
    }

    /** The amount, pieces where there is no unit; a {@link MeasureException} says what to do. */
    static Quantity of(String text, Set<Unit> own) {
        Quantity quantity = QuantityText.parse(BARE.matcher(text).matches() ? text + " ea" : text, own);
        if (!KEPT.matcher(quantity.toString()).matches()) {
            throw new MeasureException("“" + text + "” has too many digits to be kept; write a shorter number.");
        }
        Unit unit = quantity.unit();
        if (unit.system() == Unit.System.OWN && !own.contains(unit)) {
            refuseSlip(unit.symbol(), own);
        }
        return quantity;
    }

    private static void refuseSlip(String word, Set<Unit> own) {
        Optional<String> meant = Stream.concat(
                        own.stream().map(Unit::symbol), UNITS.stream().sorted())
                .filter(unit -> unit.length() >= 3 && word.length() >= 3 && NearNames.slips(unit, word, 1) == 1)
                .findFirst();
        if (meant.isPresent()) {
            throw new NearUnit(word, meant.get());
        }
    }

    /** The unit words that an item and its preparations have of their own. */
    static Set<Unit> own(Item item) {
        return Stream.concat(
                        item.measures().stream(),
                        item.preparations().stream().flatMap(each -> each.measures().stream()))
                .flatMap(measure -> Stream.of(measure.of().unit(), measure.is().unit()))
                .filter(unit -> unit.system() == Unit.System.OWN)
                .collect(Collectors.toSet());
    }

    /** A word that is no unit but nearly one. */
    static final class NearUnit extends MeasureException {
        private static final long serialVersionUID = 1L;
        private final String word;
        private final String meant;

        NearUnit(String word, String meant) {
            super("“" + word + "” is no unit here; did you mean " + meant + "?");
            this.word = word;
            this.meant = meant;
        }

        /** The text with what was meant in place of the slip. */
        String mended(String text) {
            return text.replaceFirst("(?i)" + Pattern.quote(word), Matcher.quoteReplacement(meant));
        }
    }
}
