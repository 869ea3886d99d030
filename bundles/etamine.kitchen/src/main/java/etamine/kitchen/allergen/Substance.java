package etamine.kitchen.allergen;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What people react to, as precisely as the lists tell them apart, with the words that people write for it. */
public enum Substance {
    /** A cereal with gluten that nobody has named. */
    GLUTEN("gluten", "cereal", "gluten cereal, cereal with gluten, cereal, cereal containing gluten", ""),
    /** Wheat. */
    WHEAT("wheat", "cereal", "common wheat, durum, durum wheat, semolina, wheat flour, bulgur, couscous", ""),
    /** Spelt, a wheat. */
    SPELT("spelt", "cereal", "spelt wheat, dinkel", ""),
    /** Khorasan wheat, a wheat. */
    KHORASAN("khorasan wheat", "cereal", "khorasan", ""),
    /** Einkorn and emmer, wheats. */
    OLD_WHEAT("einkorn or emmer", "cereal", "einkorn, emmer, farro", ""),
    /** Triticale, crossed from wheat and rye. */
    TRITICALE("triticale", "cereal", "", ""),
    /** Rye. */
    RYE("rye", "cereal", "rye flour", ""),
    /** Barley. */
    BARLEY("barley", "cereal", "barley malt, malt, pearl barley", ""),
    /** Oats. */
    OATS("oats", "cereal", "oatmeal, rolled oats", ""),
    /** Buckwheat, which is no cereal and has no gluten. */
    BUCKWHEAT("buckwheat", "", "", ""),
    /** Crustaceans. */
    CRUSTACEAN(
            "crustaceans",
            "crustacean",
            "crustacea, crustacean shellfish",
            "prawn, shrimp, crab, lobster, langoustine, crayfish, spiny lobster, krill, scampi"),
    /** Molluscs. */
    MOLLUSC(
            "molluscs",
            "mollusc",
            "mollusk, molluscan shellfish",
            "mussel, oyster, clam, cockle, scallop, squid, cuttlefish, octopus, whelk, winkle, snail, abalone, limpet"),
    /** Crustaceans or molluscs: nobody has said which. */
    SHELLFISH("shellfish", "shellfish", "", ""),
    /** Fish, crustaceans or molluscs: nobody has said which. */
    SEAFOOD("seafood", "seafood", "", ""),
    /** Eggs. */
    EGG("egg", "", "egg white, egg yolk, albumen, hen's egg", ""),
    /** Fish. */
    FISH(
            "fish",
            "fish",
            "fish sauce, fish gelatine",
            "anchovy, bass, sea bass, bream, carp, cod, coley, eel, flounder, haddock, hake, halibut, herring, ling,"
                    + " mackerel, monkfish, mullet, perch, pike, plaice, pollack, pollock, salmon, sardine, sole,"
                    + " sprat, sturgeon, swordfish, trout, tuna, turbot, whiting, zander"),
    /** Peanuts, which are no nuts. */
    PEANUT("peanut", "", "groundnut, arachis, peanut butter, monkey nut", ""),
    /** Soybeans. */
    SOY("soy", "", "soya, soy sauce, soybean, soya bean, soy bean, tofu, edamame, miso", ""),
    /** Milk, its lactose included. */
    MILK("milk", "", "dairy, lactose, casein, whey, butter, cream, cheese, milk protein, cow's milk", ""),
    /** A nut that nobody has named. */
    NUTS("nuts", "nut", "nut, tree nut, treenut, nuts from trees", ""),
    /** Almond. */
    ALMOND("almond", "nut", "almond nut, marzipan", ""),
    /** Hazelnut. */
    HAZELNUT("hazelnut", "nut", "filbert, cobnut, hazel", ""),
    /** Walnut. */
    WALNUT("walnut", "nut", "", ""),
    /** Cashew. */
    CASHEW("cashew", "nut", "cashew nut", ""),
    /** Pecan. */
    PECAN("pecan", "nut", "pecan nut", ""),
    /** Brazil nut. */
    BRAZIL_NUT("brazil nut", "nut", "brazil", ""),
    /** Pistachio. */
    PISTACHIO("pistachio", "nut", "pistachio nut", ""),
    /** Macadamia. */
    MACADAMIA("macadamia", "nut", "macadamia nut, queensland nut", ""),
    /** Pine nut. */
    PINE_NUT("pine nut", "nut", "pine kernel, pinenut, pignoli, pignolia", ""),
    /** Celery, celeriac included. */
    CELERY("celery", "", "celeriac, celery root, celery seed, celery salt", ""),
    /** Mustard. */
    MUSTARD("mustard", "", "mustard seed", ""),
    /** Sesame. */
    SESAME("sesame", "", "sesame seed, tahini, sesame oil", ""),
    /** Sulphur dioxide and sulphites. */
    SULPHITES(
            "sulphites",
            "",
            "sulfite, sulphite, sulphur dioxide, sulfur dioxide, so2, added sulphite, added sulfite, metabisulphite,"
                    + " metabisulfite, e220, e221, e222, e223, e224, e226, e227, e228",
            ""),
    /** Lupin. */
    LUPIN("lupin", "", "lupine, lupin flour, lupin seed", "");

    private final String word;
    private final String sort;
    private final List<String> synonyms;
    private final List<String> species;

    Substance(String word, String sort, String synonyms, String species) {
        this.word = word;
        this.sort = sort;
        this.synonyms = split(synonyms);
        this.species = split(species);
    }

    private static List<String> split(String words) {
        return Stream.of(words.split(","))
                .map(String::strip)
                .filter(each -> !each.isEmpty())
                .toList();
    }

    /** The word this program writes for it. */
    public String word() {
        return word;
    }

    /** What one asks for to have it named: cereal, nut, fish, crustacean, mollusc; empty where it names itself. */
    public String sort() {
        return sort;
    }

    /** Other words for the same thing, in the singular. */
    public List<String> synonyms() {
        return synonyms;
    }

    /** Well-known species of it, each a name for it; not a closed list. */
    public List<String> species() {
        return species;
    }

    /** What it may stand for: itself alone, or several where the word is too broad to settle which. */
    public Set<Substance> covers() {
        return switch (this) {
            case GLUTEN -> EnumSet.range(WHEAT, OATS);
            case NUTS -> EnumSet.range(ALMOND, PINE_NUT);
            case SHELLFISH -> EnumSet.of(CRUSTACEAN, MOLLUSC);
            case SEAFOOD -> EnumSet.of(CRUSTACEAN, MOLLUSC, FISH);
            default -> EnumSet.of(this);
        };
    }

    /** Whether it may stand for several and so has to be named. */
    public boolean broad() {
        return covers().size() > 1;
    }

    /** Whether its word is a name already: a cereal or nut that is told apart, or anything that has no species. */
    boolean namesItself() {
        return !broad() && species.isEmpty();
    }
}
