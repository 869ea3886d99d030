package etamine.measures;

import etamine.base.Exemption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Converts exactly through equivalences, along the path with the fewest of them. Earlier layers win: an equivalence of a
 * preparation replaces the item's own for the same pair, and of two paths of one length the one nearer the first layer
 * is taken.
 */
@Exemption(
        rule = "exported-types",
        because = "a pure reckoning on values given to it, without anything outside to stand in for")
public final class Converter {
    private final Map<Unit, Map<Unit, Link>> links = new LinkedHashMap<>();

    /** One equivalence seen from one of its sides; the factor is for amounts in the basic units of both. */
    private record Link(Unit to, Ratio factor, Equivalence source, int layer) {}

    /** A way walked so far; the depth counts how far its links lie from the first layer. */
    private record Way(Unit at, Ratio factor, List<Equivalence> path, int depth) {
        Way along(Link link) {
            List<Equivalence> longer = new ArrayList<>(path);
            longer.add(link.source);
            return new Way(link.to, factor.times(link.factor), List.copyOf(longer), depth + link.layer);
        }
    }

    private Converter() {}

    /** A converter over layers of equivalences: a preparation's first, then the item's own. */
    @SafeVarargs
    public static Converter of(List<Equivalence>... layers) {
        Converter converter = new Converter();
        for (int layer = 0; layer < layers.length; layer++) {
            for (Equivalence equivalence : layers[layer]) {
                converter.link(equivalence, layer);
            }
        }
        return converter;
    }

    private void link(Equivalence equivalence, int layer) {
        Quantity left = basic(equivalence.of());
        Quantity right = basic(equivalence.is());
        if (left.unit().isLike(right.unit())) {
            return;
        }
        Ratio factor = right.amount().dividedBy(left.amount());
        linksOf(left.unit()).putIfAbsent(right.unit(), new Link(right.unit(), factor, equivalence, layer));
        Ratio back = left.amount().dividedBy(right.amount());
        linksOf(right.unit()).putIfAbsent(left.unit(), new Link(left.unit(), back, equivalence, layer));
    }

    private Map<Unit, Link> linksOf(Unit unit) {
        return links.computeIfAbsent(unit, key -> new LinkedHashMap<>());
    }

    /** The quantity in another unit, or which equivalence is missing. */
    public Conversion convert(Quantity quantity, Unit to) {
        if (quantity.unit().isLike(to)) {
            return new Conversion.Converted(quantity.in(to), List.of());
        }
        Quantity start = basic(quantity);
        return way(start.unit(), basic(to))
                .<Conversion>map(way -> new Conversion.Converted(
                        new Quantity(start.amount().times(way.factor), way.at).in(to), way.path))
                .orElseGet(() -> new Conversion.Missing(quantity.unit(), to, missing(quantity.unit(), to)));
    }

    /** The quantity in g, ml, ea or portion, or which equivalence is missing; refuses words as a target. */
    public Conversion convert(Quantity quantity, Dimension to) {
        return convert(quantity, Unit.basic(to));
    }

    /** Step by step away from the start, so the first arrival has the fewest steps; every unit is left once. */
    private Optional<Way> way(Unit from, Unit to) {
        Set<Unit> left = new HashSet<>();
        List<Way> reached = List.of(new Way(from, Ratio.ONE, List.of(), 0));
        while (!reached.isEmpty()) {
            List<Way> next = new ArrayList<>();
            for (Way way : reached) {
                if (way.at.equals(to)) {
                    return Optional.of(way);
                }
                if (left.add(way.at)) {
                    linksFrom(way.at).forEach(link -> next.add(way.along(link)));
                }
            }
            next.sort(Comparator.comparingInt(Way::depth));
            reached = next;
        }
        return Optional.empty();
    }

    private Collection<Link> linksFrom(Unit unit) {
        return links.getOrDefault(unit, Map.of()).values();
    }

    /** Asks for a weight when one side has one already, since most measures are weighed; else for the pair itself. */
    private String missing(Unit from, Unit to) {
        boolean fromWeighed = way(basic(from), Unit.G).isPresent();
        boolean toWeighed = way(basic(to), Unit.G).isPresent();
        if (fromWeighed || toWeighed) {
            return MissingMeasure.weight(fromWeighed ? to : from);
        }
        return MissingMeasure.between(from, to);
    }

    private static Quantity basic(Quantity quantity) {
        return quantity.in(basic(quantity.unit()));
    }

    private static Unit basic(Unit unit) {
        return unit.dimension() == Dimension.WORD ? unit : Unit.basic(unit.dimension());
    }
}
