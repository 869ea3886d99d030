package etamine.kitchen.allergen;

import static etamine.kitchen.allergen.Substance.ALMOND;
import static etamine.kitchen.allergen.Substance.BARLEY;
import static etamine.kitchen.allergen.Substance.BRAZIL_NUT;
import static etamine.kitchen.allergen.Substance.BUCKWHEAT;
import static etamine.kitchen.allergen.Substance.CASHEW;
import static etamine.kitchen.allergen.Substance.CELERY;
import static etamine.kitchen.allergen.Substance.CRUSTACEAN;
import static etamine.kitchen.allergen.Substance.EGG;
import static etamine.kitchen.allergen.Substance.FISH;
import static etamine.kitchen.allergen.Substance.HAZELNUT;
import static etamine.kitchen.allergen.Substance.KHORASAN;
import static etamine.kitchen.allergen.Substance.LUPIN;
import static etamine.kitchen.allergen.Substance.MACADAMIA;
import static etamine.kitchen.allergen.Substance.MILK;
import static etamine.kitchen.allergen.Substance.MOLLUSC;
import static etamine.kitchen.allergen.Substance.MUSTARD;
import static etamine.kitchen.allergen.Substance.OATS;
import static etamine.kitchen.allergen.Substance.OLD_WHEAT;
import static etamine.kitchen.allergen.Substance.PEANUT;
import static etamine.kitchen.allergen.Substance.PECAN;
import static etamine.kitchen.allergen.Substance.PINE_NUT;
import static etamine.kitchen.allergen.Substance.PISTACHIO;
import static etamine.kitchen.allergen.Substance.RYE;
import static etamine.kitchen.allergen.Substance.SESAME;
import static etamine.kitchen.allergen.Substance.SOY;
import static etamine.kitchen.allergen.Substance.SPELT;
import static etamine.kitchen.allergen.Substance.SULPHITES;
import static etamine.kitchen.allergen.Substance.TRITICALE;
import static etamine.kitchen.allergen.Substance.WALNUT;
import static etamine.kitchen.allergen.Substance.WHEAT;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The groups of each list, in the order of the list. */
final class Groups {
    private static final Set<Substance> WHEATS = EnumSet.of(WHEAT, SPELT, KHORASAN, OLD_WHEAT);
    private static final Set<Substance> OTHER_CEREALS = EnumSet.of(RYE, BARLEY, OATS);
    private static final Set<Substance> CLOSED_NUTS = EnumSet.range(ALMOND, MACADAMIA);
    private static final Set<Substance> NUTS = EnumSet.range(ALMOND, PINE_NUT);

    private Groups() {}

    // Annex II: groups 1 and 8 are closed lists, and the cereal or nut is named (Notice 2017/C 428/01).
    static List<Group> european() {
        return List.of(
                named("gluten", "Cereals with gluten", all(WHEATS, OTHER_CEREALS, Set.of(TRITICALE))),
                plain("crustaceans", "Crustaceans", CRUSTACEAN),
                plain("eggs", "Eggs", EGG),
                plain("fish", "Fish", FISH),
                plain("peanuts", "Peanuts", PEANUT),
                plain("soy", "Soybeans", SOY),
                plain("milk", "Milk", MILK),
                named("nuts", "Nuts", CLOSED_NUTS),
                plain("celery", "Celery", CELERY),
                plain("mustard", "Mustard", MUSTARD),
                plain("sesame", "Sesame", SESAME),
                plain("sulphites", "Sulphites", SULPHITES),
                plain("lupin", "Lupin", LUPIN),
                plain("molluscs", "Molluscs", MOLLUSC));
    }

    // The species or type is named for fish, crustaceans and tree nuts. The Act gives tree nuts by example, so that it
    // does not settle the pine nut; nor does it settle triticale.
    static List<Group> american() {
        return List.of(
                plain("milk", "Milk", MILK),
                plain("eggs", "Eggs", EGG),
                named("fish", "Fish", Set.of(FISH)),
                named("crustaceans", "Crustacean shellfish", Set.of(CRUSTACEAN)),
                open(named("nuts", "Tree nuts", CLOSED_NUTS), PINE_NUT),
                plain("peanuts", "Peanuts", PEANUT),
                open(group("wheat", "Wheat", false, WHEATS), TRITICALE),
                plain("soy", "Soybeans", SOY),
                plain("sesame", "Sesame", SESAME),
                plain("sulphites", "Sulphites", SULPHITES));
    }

    static List<Group> australian() {
        return List.of(
                open(group("wheat", "Wheat", false, WHEATS), TRITICALE),
                named("gluten", "Other cereals with gluten", OTHER_CEREALS),
                plain("crustaceans", "Crustacea", CRUSTACEAN),
                plain("molluscs", "Mollusc", MOLLUSC),
                plain("eggs", "Egg", EGG),
                plain("fish", "Fish", FISH),
                plain("milk", "Milk", MILK),
                plain("peanuts", "Peanut", PEANUT),
                plain("soy", "Soy", SOY),
                plain("sesame", "Sesame", SESAME),
                named("nuts", "Tree nuts", NUTS),
                plain("lupin", "Lupin", LUPIN),
                plain("sulphites", "Added sulphites", SULPHITES));
    }

    static List<Group> canadian() {
        return List.of(
                plain("eggs", "Eggs", EGG),
                plain("milk", "Milk", MILK),
                plain("mustard", "Mustard", MUSTARD),
                plain("peanuts", "Peanuts", PEANUT),
                named("crustaceans", "Crustaceans", Set.of(CRUSTACEAN)),
                named("molluscs", "Molluscs", Set.of(MOLLUSC)),
                named("fish", "Fish", Set.of(FISH)),
                plain("sesame", "Sesame", SESAME),
                plain("soy", "Soy", SOY),
                plain("sulphites", "Sulphites", SULPHITES),
                named("nuts", "Tree nuts", NUTS),
                named("wheat", "Wheat and triticale", all(WHEATS, Set.of(TRITICALE))),
                named("gluten", "Other sources of gluten", OTHER_CEREALS));
    }

    // The second half is the list that each country may take up. Neither half names molluscs or triticale.
    static List<Group> international() {
        return List.of(
                open(
                        national(named("gluten", "Cereals with gluten", all(WHEATS, Set.of(RYE, BARLEY))), OATS),
                        TRITICALE),
                plain("crustaceans", "Crustacea", CRUSTACEAN),
                plain("eggs", "Eggs", EGG),
                plain("fish", "Fish", FISH),
                plain("peanuts", "Peanuts", PEANUT),
                plain("milk", "Milk", MILK),
                plain("sesame", "Sesame", SESAME),
                national(
                        named("nuts", "Tree nuts", EnumSet.of(ALMOND, CASHEW, HAZELNUT, PECAN, PISTACHIO, WALNUT)),
                        BRAZIL_NUT,
                        MACADAMIA,
                        PINE_NUT),
                plain("sulphites", "Sulphites", SULPHITES),
                national(group("buckwheat", "Buckwheat", false, Set.of()), BUCKWHEAT),
                national(group("celery", "Celery", false, Set.of()), CELERY),
                national(group("lupin", "Lupin", false, Set.of()), LUPIN),
                national(group("mustard", "Mustard", false, Set.of()), MUSTARD),
                national(group("soy", "Soybeans", false, Set.of()), SOY),
                open(group("molluscs", "Molluscs", false, Set.of()), MOLLUSC));
    }

    private static Group plain(String id, String name, Substance one) {
        return group(id, name, false, Set.of(one));
    }

    private static Group named(String id, String name, Set<Substance> members) {
        return group(id, name, true, members);
    }

    private static Group group(String id, String name, boolean named, Set<Substance> members) {
        Map<Substance, Standing> standing = new EnumMap<>(Substance.class);
        members.forEach(member -> standing.put(member, Standing.DECLARED));
        return new Group(id, name, named, standing);
    }

    private static Group open(Group group, Substance... added) {
        return with(group, Standing.OPEN, added);
    }

    private static Group national(Group group, Substance... added) {
        return with(group, Standing.NATIONAL, added);
    }

    private static Group with(Group group, Standing standing, Substance... added) {
        Map<Substance, Standing> members = new EnumMap<>(Substance.class);
        members.putAll(group.members());
        for (Substance substance : added) {
            members.put(substance, standing);
        }
        return new Group(group.id(), group.name(), group.named(), members);
    }

    @SafeVarargs
    private static Set<Substance> all(Set<Substance>... sets) {
        Set<Substance> all = EnumSet.noneOf(Substance.class);
        for (Set<Substance> set : sets) {
            all.addAll(set);
        }
        return all;
    }
}
