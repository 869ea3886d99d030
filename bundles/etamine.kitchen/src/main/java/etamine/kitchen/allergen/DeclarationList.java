package etamine.kitchen.allergen;

import etamine.measures.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Lists of allergens that have to be declared, each with its source and how sure this program is of it. */
public enum DeclarationList {
    /** The fourteen groups of the European Union, which the United Kingdom keeps. */
    EU(
            "European Union, United Kingdom",
            "Regulation (EU) No 1169/2011, Annex II; Commission Notice 2017/C 428/01 (from secondary sources)",
            false,
            Groups.european()),
    /** The nine of the United States, and sulphites. */
    US(
            "United States",
            "FALCPA 2004 with the FASTER Act 2021; sulphites by 21 CFR 101.100(a)(4) (from memory)",
            true,
            Groups.american()),
    /** Australia and New Zealand. */
    FSANZ(
            "Australia, New Zealand",
            "FSANZ Standard 1.2.3 and Schedule 9 (from secondary sources)",
            true,
            Groups.australian()),
    /** Canada. */
    CANADA("Canada", "Food and Drug Regulations, enhanced labelling (from memory)", true, Groups.canadian()),
    /** The international standard, of which countries make their own law. */
    CODEX(
            "Codex Alimentarius",
            "CXS 1-1985 as revised in 2024 (the revision from secondary sources, the list from memory)",
            true,
            Groups.international());

    private final String title;
    private final String source;
    private final SulphiteLimit sulphites;
    private final List<Group> groups;

    DeclarationList(String title, String source, boolean fromLimit, List<Group> groups) {
        this.title = title;
        this.source = source;
        this.sulphites = new SulphiteLimit(Ratio.of(10), fromLimit);
        this.groups = List.copyOf(groups);
    }

    /** Its identifier in files, settings and on the console. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Where it holds. */
    public String title() {
        return title;
    }

    /** Where its content is from, and how sure that is. */
    public String source() {
        return source;
    }

    /** From when sulphites are declared. */
    public SulphiteLimit sulphites() {
        return sulphites;
    }

    /** Its groups, in its order. */
    public List<Group> groups() {
        return groups;
    }

    /** The group of that id. */
    public Optional<Group> group(String id) {
        return groups.stream().filter(group -> group.id().equals(id)).findFirst();
    }

    /**
     * What this list says of an allergen; empty when it is not on this list. A word too broad to settle the group
     * belongs to every group that it may mean.
     */
    public List<Declaration> judge(Allergen allergen) {
        List<Declaration> found = new ArrayList<>();
        allergen.substance().ifPresent(substance -> {
            Set<Substance> covered = substance.covers();
            for (Group group : groups) {
                if (group.hasAnyOf(covered)) {
                    found.add(new Declaration(group, standing(group, allergen), ask(group, allergen)));
                }
            }
        });
        return List.copyOf(found);
    }

    private Standing standing(Group group, Allergen allergen) {
        boolean little = allergen.isSulphites()
                && allergen.amount()
                        .filter(amount -> !sulphites.reachedBy(amount))
                        .isPresent();
        return little
                ? Standing.BELOW
                : group.standing(allergen.substance().orElseThrow().covers());
    }

    private static Optional<String> ask(Group group, Allergen allergen) {
        boolean broad = allergen.substance().orElseThrow().broad();
        return broad || group.named() ? allergen.ask() : Optional.empty();
    }

    /** The list of that identifier, in any case; the sentence of the exception says which there are. */
    public static DeclarationList of(String id) {
        return Stream.of(values())
                .filter(list -> list.id().equalsIgnoreCase(id.strip()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no allergen list " + id + "; choose one of "
                        + Stream.of(values()).map(DeclarationList::id).collect(Collectors.joining(", ")) + "."));
    }
}
