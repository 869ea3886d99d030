package etamine.recipes.internal.scale;

import etamine.measures.Dimension;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.Filled;
import etamine.recipes.Vessel;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One kind of vessel as written: count, shape, size and level. Used once. */
final class VesselText {
    private static final String EXAMPLES =
            "such as 12 x 130 ml, 2 x GN 1/1 65 mm, 3 x round 20 cm x 5 cm or 30 cm x 20 cm x 4 cm, with , 80 % behind it"
                    + " where they are not filled";
    private static final Pattern LEVEL = Pattern.compile("[,\\s]\\s*([0-9]+(?:[.,][0-9]+)?)\\s*%\\s*(?:full|filled)?$");
    private static final Pattern GASTRONORM =
            Pattern.compile("gn\\s*([0-9]/[0-9])(?:\\s*(?:x|,)?\\s*([0-9]+(?:[.,][0-9]+)?)\\s*(mm|cm)?)?");
    private static final Pattern LENGTH =
            Pattern.compile("([0-9]+(?:[.,][0-9]+)?(?:\\s+[0-9]/[0-9])?)\\s*(mm|cm|in|inch|inches|\")?");
    /** Millimetres; the inch is 25.4 by definition (UCUM, NIST Handbook 44). */
    private static final Map<String, Ratio> MILLIMETRES = Map.of(
            "mm", Ratio.ONE,
            "cm", Ratio.of(10),
            "in", Ratio.parse("25.4"),
            "inch", Ratio.parse("25.4"),
            "inches", Ratio.parse("25.4"),
            "\"", Ratio.parse("25.4"));
    /** Nine digits are finer than any tin is bent. */
    private static final Ratio PI = Ratio.parse("3.14159265");

    private final String written;
    private String rest;

    VesselText(String text) {
        written = text.strip();
        rest = written.toLowerCase(Locale.ROOT).replace('\u00d7', 'x').replaceAll("\\s+", " ");
    }

    Filled filled() {
        Ratio level = level();
        Matcher gastronorm = GASTRONORM.matcher(rest);
        if (gastronorm.find()) {
            return new Filled(countBefore(gastronorm.start()), gastronorm(gastronorm), level);
        }
        for (Shape shape : Shape.values()) {
            int at = rest.indexOf(shape.word);
            if (at >= 0) {
                Ratio count = countBefore(at);
                return new Filled(count, shaped(shape, parts(rest.substring(at + shape.word.length()))), level);
            }
        }
        List<String> parts = parts(rest);
        return length(parts.get(parts.size() - 1), Optional.empty()).isPresent()
                ? box(parts, level)
                : measured(parts, level);
    }

    private enum Shape {
        ROUND("round"),
        SQUARE("square");

        private final String word;

        Shape(String word) {
            this.word = word;
        }
    }

    private Ratio level() {
        Matcher found = LEVEL.matcher(rest);
        if (!found.find()) {
            return Ratio.ONE;
        }
        rest = rest.substring(0, found.start()).strip();
        return number(found.group(1)).dividedBy(Ratio.of(100));
    }

    private Ratio countBefore(int at) {
        String before = rest.substring(0, at).strip();
        return before.isEmpty() ? Ratio.ONE : number(before.replaceFirst("\\s*x$", ""));
    }

    private Vessel gastronorm(Matcher found) {
        if (found.group(2) == null || found.end() != rest.length()) {
            throw new MeasureException("Say how deep the container is, such as GN " + found.group(1) + " 65 mm.");
        }
        Ratio unit = "cm".equals(found.group(3)) ? Ratio.of(10) : Ratio.ONE;
        return VesselSizes.gastronorm(found.group(1), number(found.group(2)).times(unit));
    }

    private Vessel shaped(Shape shape, List<String> parts) {
        List<Ratio> sizes = lengths(parts, 2);
        Ratio across = sizes.get(0);
        Ratio area = across.times(across).times(shape == Shape.ROUND ? PI.dividedBy(Ratio.of(4)) : Ratio.ONE);
        return vessel(area.times(sizes.get(1)), true);
    }

    private Filled box(List<String> parts, Ratio level) {
        boolean counted = parts.size() == 4;
        List<Ratio> sizes = lengths(counted ? parts.subList(1, 4) : parts, 3);
        Ratio count = counted ? number(parts.get(0)) : Ratio.ONE;
        return new Filled(count, vessel(sizes.get(0).times(sizes.get(1)).times(sizes.get(2)), counted), level);
    }

    private Filled measured(List<String> parts, Ratio level) {
        if (parts.size() > 2) {
            throw unclear();
        }
        Quantity volume = QuantityText.parse(parts.get(parts.size() - 1));
        if (volume.unit().dimension() != Dimension.VOLUME) {
            throw new MeasureException(
                    "“" + written + "” is not a volume; write what the vessel holds, " + EXAMPLES + ".");
        }
        return new Filled(
                parts.size() == 2 ? number(parts.get(0)) : Ratio.ONE,
                new Vessel(name(parts.size() == 2), volume, false),
                level);
    }

    private Vessel vessel(Ratio cubicMillimetres, boolean counted) {
        return new Vessel(name(counted), new Quantity(cubicMillimetres.dividedBy(Ratio.of(1000)), Unit.ML), false);
    }

    /** As written, without count and level. */
    private String name(boolean counted) {
        String bare = counted ? written.replaceFirst("^[0-9]+(?:[.,][0-9]+)?\\s*[xX\u00d7]\\s*", "") : written;
        return bare.replaceFirst("[,\\s]\\s*[0-9]+(?:[.,][0-9]+)?\\s*%.*$", "").strip();
    }

    private static List<String> parts(String text) {
        return List.of(text.split("x", -1)).stream().map(String::strip).toList();
    }

    private List<Ratio> lengths(List<String> parts, int many) {
        if (parts.size() != many) {
            throw unclear();
        }
        Matcher last = LENGTH.matcher(parts.get(many - 1));
        Optional<String> unit = last.matches() ? Optional.ofNullable(last.group(2)) : Optional.empty();
        List<Ratio> sizes = new ArrayList<>();
        parts.forEach(part -> sizes.add(length(part, unit).orElseThrow(this::unclear)));
        return sizes;
    }

    /** In millimetres; a size without a unit has that of the last one. */
    private static Optional<Ratio> length(String text, Optional<String> otherwise) {
        Matcher found = LENGTH.matcher(text);
        if (!found.matches()) {
            return Optional.empty();
        }
        return Optional.ofNullable(found.group(2))
                .or(() -> otherwise)
                .map(MILLIMETRES::get)
                .map(unit -> number(found.group(1)).times(unit));
    }

    private static Ratio number(String text) {
        return Ratio.parse(text.strip());
    }

    private MeasureException unclear() {
        return new MeasureException("“" + written + "” is not clear; write vessels " + EXAMPLES + ".");
    }
}
