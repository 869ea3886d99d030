package etamine.measures;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A unit with its exact size. Sizes are the definitions of UCUM (ucum-essence.xml, version 2.2), with which NIST
 * Handbook 44, Appendix C, agrees for US units; the metric kitchen spoons and cup are 5, 15 and 250 ml.
 *
 * <p>{@link #rec20} is the UN/ECE Recommendation 20 code under which an amount may be sent. Where that list has no code
 * that fixes the size (its code for a cup does not say which cup), it is the millilitre's, and the amount must be
 * converted first: {@link Quantity#forTrade()} does it.
 *
 * @param symbol the unit in the exchange form, such as {@code tbsp_m}
 * @param dimension what it measures
 * @param inBase its size in base units of the dimension; one for a word
 * @param rec20 the code for trade documents; empty for a word
 * @param system the family it belongs to
 */
public record Unit(String symbol, Dimension dimension, Ratio inBase, String rec20, System system) {

    /** Families of units that are used together. */
    public enum System {
        /** Gram and litre with their decimal parts. */
        METRIC,
        /** United States customary. */
        US,
        /** Spoons and cup of round metric size. */
        METRIC_KITCHEN,
        /** British imperial. */
        IMPERIAL,
        /** Pieces, dozens and portions. */
        COUNT,
        /** A word of an ingredient's own. */
        OWN
    }

    /** Milligram. */
    public static final Unit MG = mass("mg", "1", "MGM", System.METRIC);
    /** Gram. */
    public static final Unit G = mass("g", "1000", "GRM", System.METRIC);
    /** Kilogram. */
    public static final Unit KG = mass("kg", "1000000", "KGM", System.METRIC);
    /** Avoirdupois ounce. */
    public static final Unit OZ = mass("oz", "28349.523125", "ONZ", System.US);
    /** Avoirdupois pound. */
    public static final Unit LB = mass("lb", "453592.37", "LBR", System.US);
    /** Millilitre. */
    public static final Unit ML = volume("ml", "1000", "MLT", System.METRIC);
    /** Centilitre. */
    public static final Unit CL = volume("cl", "10000", "CLT", System.METRIC);
    /** Decilitre. */
    public static final Unit DL = volume("dl", "100000", "DLT", System.METRIC);
    /** Litre. */
    public static final Unit L = volume("l", "1000000", "LTR", System.METRIC);
    /** US teaspoon. */
    public static final Unit TSP = volume("tsp", "4928.92159375", "G25", System.US);
    /** US tablespoon. */
    public static final Unit TBSP = volume("tbsp", "14786.76478125", "G24", System.US);
    /** US fluid ounce. */
    public static final Unit FLOZ = volume("floz", "29573.5295625", "OZA", System.US);
    /** US cup. */
    public static final Unit CUP = volume("cup", "236588.2365", "MLT", System.US);
    /** US liquid pint. */
    public static final Unit PT = volume("pt", "473176.473", "PTL", System.US);
    /** US liquid quart. */
    public static final Unit QT = volume("qt", "946352.946", "QTL", System.US);
    /** US gallon. */
    public static final Unit GAL = volume("gal", "3785411.784", "GLL", System.US);
    /** Teaspoon of 5 ml. */
    public static final Unit TSP_M = volume("tsp_m", "5000", "MLT", System.METRIC_KITCHEN);
    /** Tablespoon of 15 ml. */
    public static final Unit TBSP_M = volume("tbsp_m", "15000", "MLT", System.METRIC_KITCHEN);
    /** Cup of 250 ml. */
    public static final Unit CUP_M = volume("cup_m", "250000", "MLT", System.METRIC_KITCHEN);
    /** Imperial fluid ounce. */
    public static final Unit FLOZ_IMP = volume("floz_imp", "28413.0625", "OZI", System.IMPERIAL);
    /** Imperial pint. */
    public static final Unit PT_IMP = volume("pt_imp", "568261.25", "PTI", System.IMPERIAL);
    /** Imperial quart. */
    public static final Unit QT_IMP = volume("qt_imp", "1136522.5", "QTI", System.IMPERIAL);
    /** Imperial gallon. */
    public static final Unit GAL_IMP = volume("gal_imp", "4546090", "GLI", System.IMPERIAL);
    /** One piece. */
    public static final Unit EA = count("ea", Dimension.COUNT, "1000", "EA");
    /** Twelve pieces. */
    public static final Unit DOZEN = count("dozen", Dimension.COUNT, "12000", "DZN");
    /** One portion of something made. */
    public static final Unit PORTION = count("portion", Dimension.PORTION, "1000", "PTN");

    private static final List<Unit> ALL = List.of(
            MG, G, KG, OZ, LB, ML, CL, DL, L, TSP, TBSP, FLOZ, CUP, PT, QT, GAL, TSP_M, TBSP_M, CUP_M, FLOZ_IMP, PT_IMP,
            QT_IMP, GAL_IMP, EA, DOZEN, PORTION);
    private static final Map<String, Unit> BY_SYMBOL =
            ALL.stream().collect(Collectors.toUnmodifiableMap(Unit::symbol, Function.identity()));
    private static final Map<String, Unit> BY_REC20 = byCode();
    private static final int LONGEST_WORD = 40;

    /** Refuses sizes that are not more than zero. */
    public Unit {
        if (inBase.signum() <= 0) {
            throw new MeasureException("A unit must be larger than nothing: " + symbol + ".");
        }
    }

    /** Every unit there is, words excepted, smallest to largest within a family. */
    public static List<Unit> all() {
        return ALL;
    }

    /** The unit of the exchange form with exactly this symbol. */
    public static Optional<Unit> find(String symbol) {
        return Optional.ofNullable(BY_SYMBOL.get(symbol));
    }

    /** The unit whose size a UN/ECE Recommendation 20 code fixes; {@code G21} (a cup, not said which) finds none. */
    public static Optional<Unit> byRec20(String code) {
        return Optional.ofNullable(BY_REC20.get(code));
    }

    /** A unit word of an ingredient's own, in lower case; refuses what is a unit already and what cannot be a word. */
    public static Unit word(String word) {
        String plain = word.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
        if (UnitWords.find(plain).isPresent()) {
            throw new MeasureException("“" + plain + "” is a unit already; choose another word.");
        }
        if (plain.length() > LONGEST_WORD || !plain.matches("\\p{L}[\\p{L}\\p{M}'’ -]*[\\p{L}\\p{M}]")) {
            throw new MeasureException("“" + NumberReader.excerpt(plain)
                    + "” is not a unit; use one such as g, ml, cup or ea, or a word of two letters or more.");
        }
        return new Unit(plain, Dimension.WORD, Ratio.ONE, "", System.OWN);
    }

    /** The unit in which results of a dimension are given: g, ml, ea or portion; refuses words. */
    public static Unit basic(Dimension dimension) {
        return switch (dimension) {
            case MASS -> G;
            case VOLUME -> ML;
            case COUNT -> EA;
            case PORTION -> PORTION;
            case WORD -> throw new MeasureException("Say which unit word is meant; words have no common unit.");
        };
    }

    /** True when amounts in both units can be added: one dimension or, for words, the same word. */
    public boolean isLike(Unit other) {
        return dimension == other.dimension && (dimension != Dimension.WORD || symbol.equals(other.symbol));
    }

    /** The symbol. */
    @Override
    public String toString() {
        return symbol;
    }

    /** Pieces come under three codes in trade documents; all of them say one. */
    private static Map<String, Unit> byCode() {
        Map<String, Unit> codes =
                ALL.stream().collect(Collectors.toMap(Unit::rec20, Function.identity(), (first, second) -> first));
        codes.put("H87", EA);
        codes.put("C62", EA);
        return Map.copyOf(codes);
    }

    private static Unit mass(String symbol, String milligrams, String code, System system) {
        return new Unit(symbol, Dimension.MASS, Ratio.parse(milligrams), code, system);
    }

    private static Unit volume(String symbol, String microlitres, String code, System system) {
        return new Unit(symbol, Dimension.VOLUME, Ratio.parse(microlitres), code, system);
    }

    private static Unit count(String symbol, Dimension dimension, String thousandths, String code) {
        return new Unit(symbol, dimension, Ratio.parse(thousandths), code, System.COUNT);
    }
}
