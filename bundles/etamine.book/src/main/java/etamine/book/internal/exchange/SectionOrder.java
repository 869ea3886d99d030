package etamine.book.internal.exchange;

import etamine.kitchen.exchange.ExchangeSection;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The order of sections: in a file as people read them, in a load each after what it needs. */
final class SectionOrder {
    /** The sections of the form, in the order people read them. */
    static final List<String> READING = List.of(
            "kitchen",
            "ingredients",
            "recipes",
            "suppliers",
            "offers",
            "places",
            "pars",
            "stock",
            "movements",
            "onOrder",
            "orders",
            "covers",
            "mix",
            "sales",
            "use",
            "photos");

    /** The order in a file: the known ones as listed in the guide, then the others by name. */
    static final Comparator<String> IN_FILE =
            Comparator.comparingInt(SectionOrder::rank).thenComparing(Comparator.naturalOrder());

    private SectionOrder() {}

    /** Each section after those it names; sections that wait for one another come in file order. */
    static List<ExchangeSection> forWriting(Collection<ExchangeSection> sections) {
        List<ExchangeSection> waiting = new ArrayList<>(sections);
        waiting.sort(Comparator.comparing(ExchangeSection::name, IN_FILE));
        List<ExchangeSection> ordered = new ArrayList<>();
        while (!waiting.isEmpty()) {
            ExchangeSection next = waiting.stream()
                    .filter(section -> waiting.stream()
                            .noneMatch(
                                    other -> other != section && section.after().contains(other.name())))
                    .findFirst()
                    .orElse(waiting.get(0));
            waiting.remove(next);
            ordered.add(next);
        }
        return ordered;
    }

    private static int rank(String name) {
        int place = READING.indexOf(name);
        return place < 0 ? READING.size() : place;
    }
}
