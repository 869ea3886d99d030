package etamine.book.internal.exchange;

import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.LoadResult.Rejected;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Which entries of a manuscript are good. All sections are read before any is checked, so that they may refer to one
 * another. With {@code onlyGood}, bad entries are taken out and the rest is judged again until nothing more falls out,
 * because what refers to a bad entry is bad as well.
 */
final class Judgement {
    private final Collection<ExchangeSection> installed;
    private final Map<ExchangeSection, Part> owned = new LinkedHashMap<>();
    private final List<Part> ownerless = new ArrayList<>();
    private final Map<ExchangeSection, List<ExchangeEntry>> entries = new LinkedHashMap<>();
    private final Set<Fault> faults = new LinkedHashSet<>();
    private final Map<Part, Integer> order = new LinkedHashMap<>();
    private FactBoard facts = FactBoard.of(List.of());

    private Judgement(Collection<ExchangeSection> installed, Manuscript manuscript) {
        this.installed = installed;
        Map<String, Part> unclaimed = new TreeMap<>();
        for (Part part : manuscript.parts()) {
            order.put(part, order.size());
            unclaimed.put(part.name(), part);
        }
        for (ExchangeSection section : SectionOrder.forWriting(installed)) {
            Part part = unclaimed.remove(section.name());
            if (part != null) {
                owned.put(section, part);
            }
        }
        faults.addAll(manuscript.faults());
        unclaimed.values().forEach(this::suspect);
        takeOut(faults);
        ownerless.addAll(unclaimed.values());
        faults.forEach(fault -> ownerless.remove(fault.part()));
    }

    /** A section that is nearly a known one would otherwise be kept in silence. */
    private void suspect(Part part) {
        if (!SectionOrder.READING.contains(part.name()) && !part.name().startsWith("x-")) {
            Set<String> known = new LinkedHashSet<>(SectionOrder.READING);
            installed.forEach(section -> known.add(section.name()));
            Misspellings.near(part.name(), known)
                    .ifPresent(meant -> faults.add(part.fault("", Misspellings.sentence(part.name(), meant))));
        }
    }

    /** Judges the manuscript by the sections that are installed. */
    static Judgement of(Collection<ExchangeSection> installed, Manuscript manuscript, boolean onlyGood) {
        Judgement judgement = new Judgement(installed, manuscript);
        judgement.takeOut(judgement.compareWithSchemas());
        Set<Fault> found = judgement.examine();
        judgement.faults.addAll(found);
        while (onlyGood && !found.isEmpty()) {
            judgement.takeOut(found);
            found = judgement.examine();
            judgement.faults.addAll(found);
        }
        return judgement;
    }

    private Set<Fault> compareWithSchemas() {
        Set<Fault> found = new LinkedHashSet<>();
        owned.forEach((section, part) -> {
            if (!part.gone()) {
                SectionSchema.of(section.schema())
                        .troubles(part.working())
                        .forEach(trouble -> found.add(part.fault(trouble.pointer(), trouble.problem())));
            }
        });
        faults.addAll(found);
        return found;
    }

    private void takeOut(Collection<Fault> found) {
        found.forEach(fault -> fault.part().takeOut(fault.pointer()));
    }

    private Set<Fault> examine() {
        facts = FactBoard.of(installed);
        entries.clear();
        owned.forEach(
                (section, part) -> entries.put(section, part.gone() ? List.of() : section.read(part.working(), facts)));
        Set<Fault> found = new LinkedHashSet<>();
        entries.forEach((section, read) -> {
            Part part = owned.get(section);
            Set<String> ids = new HashSet<>();
            for (ExchangeEntry entry : read) {
                entry.troubles().forEach(trouble -> found.add(fault(part, entry, trouble)));
                if (!entry.id().isEmpty() && !ids.add(entry.id())) {
                    found.add(fault(part, entry, duplicate(entry.id())));
                }
                entry.check(facts).forEach(trouble -> found.add(fault(part, entry, trouble)));
            }
        });
        return found;
    }

    /** What may not be meant among the good entries, in the order of the sections. */
    List<Rejected> doubts() {
        List<Rejected> doubts = new ArrayList<>();
        entries.forEach((section, read) -> read.forEach(entry -> entry.doubts(facts)
                .forEach(trouble ->
                        doubts.add(fault(owned.get(section), entry, trouble).rejected()))));
        return doubts;
    }

    private static Trouble duplicate(String id) {
        return new Trouble(
                "", "Duplicate id: \"" + id + "\" stands further up already; give one of the two another id.");
    }

    private static Fault fault(Part part, ExchangeEntry entry, Trouble trouble) {
        return part.fault(entry.pointer() + trouble.pointer(), trouble.problem());
    }

    /** What is wrong, file by file in the order it stands there. */
    List<Fault> faults() {
        List<Fault> sorted = new ArrayList<>(faults);
        List<Object> files =
                faults.stream().map(fault -> (Object) fault.file()).distinct().toList();
        sorted.sort(Comparator.<Fault>comparingInt(fault -> files.indexOf(fault.file()))
                .thenComparingInt(fault -> order.getOrDefault(fault.part(), 0))
                .thenComparingInt(fault -> Pointers.index(fault.pointer())));
        return sorted;
    }

    /** The entries by section, in the order they are to be written. */
    Map<ExchangeSection, List<ExchangeEntry>> entries() {
        return entries;
    }

    /** How many good entries each section has. */
    Map<String, Integer> good() {
        Map<String, Integer> good = new LinkedHashMap<>();
        owned.forEach((section, part) -> good.put(section.name(), good(part)));
        return good;
    }

    private int good(Part part) {
        Set<Integer> bad = new HashSet<>();
        faults.stream()
                .filter(fault -> fault.part() == part)
                .forEach(fault -> bad.add(Pointers.index(fault.pointer())));
        return !part.isList() && !bad.isEmpty() || bad.contains(-1) ? 0 : part.total() - bad.size();
    }

    /** Sections that no installed module owns. */
    List<Part> ownerless() {
        return ownerless;
    }
}
