package etamine.measures;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The words people write for units, singular and plural. */
final class UnitWords {
    private static final Map<String, Unit> WORDS = new HashMap<>();

    static {
        Unit.all().forEach(unit -> WORDS.put(unit.symbol(), unit));
        plural(Unit.MG, "mgs", "milligram", "milligramme");
        plural(Unit.G, "gs", "gram", "gramme", "gm");
        plural(Unit.KG, "kgs", "kilogram", "kilogramme", "kilo");
        plural(Unit.OZ, "ozs", "ounce");
        plural(Unit.LB, "lbs", "pound");
        plural(Unit.ML, "mls", "millilitre", "milliliter");
        plural(Unit.CL, "cls", "centilitre", "centiliter");
        plural(Unit.DL, "dls", "decilitre", "deciliter");
        plural(Unit.L, "ltr", "litre", "liter");
        plural(Unit.TSP, "tsps", "teaspoon");
        plural(Unit.TBSP, "tbsps", "tablespoon", "tbs");
        plural(Unit.FLOZ, "fl oz", "fluid ounce");
        plural(Unit.CUP, "cups", "cup");
        plural(Unit.PT, "pts", "pint");
        plural(Unit.QT, "qts", "quart");
        plural(Unit.GAL, "gals", "gallon");
        plural(Unit.TSP_M, "metric tsp", "metric teaspoon");
        plural(Unit.TBSP_M, "metric tbsp", "metric tablespoon");
        plural(Unit.CUP_M, "metric cups", "metric cup");
        plural(Unit.FLOZ_IMP, "imperial fl oz", "imperial fluid ounce");
        plural(Unit.PT_IMP, "imperial pt", "imperial pint");
        plural(Unit.QT_IMP, "imperial qt", "imperial quart");
        plural(Unit.GAL_IMP, "imperial gal", "imperial gallon");
        plural(Unit.EA, "each", "piece", "pc", "pce");
        plural(Unit.DOZEN, "doz", "dozen");
        plural(Unit.PORTION, "ptn", "portion", "serving");
    }

    private UnitWords() {}

    /** The unit a word stands for, if it is not an ingredient's own. */
    static Optional<Unit> find(String word) {
        Unit asWritten = WORDS.get(word);
        if (asWritten != null) {
            return Optional.of(asWritten);
        }
        String plain = word.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        return Optional.ofNullable(WORDS.get(plain.replace(".", "")));
    }

    private static void plural(Unit unit, String asIs, String... words) {
        WORDS.put(asIs, unit);
        for (String word : words) {
            WORDS.put(word, unit);
            WORDS.put(word + "s", unit);
        }
    }
}
