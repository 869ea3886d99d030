package etamine.kitchen.allergen;

import etamine.measures.Ratio;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One allergen as somebody wrote it, understood as far as the word goes.
 *
 * @param word as written where it is not understood, else the substance's own word
 * @param substance what it is; empty when no list knows the word
 * @param name the cereal, nut or species; empty when nobody has named it
 * @param amount for sulphites, mg/kg or mg/l as total SO2 of what is ready to eat; empty when nobody has measured
 */
public record Allergen(String word, Optional<Substance> substance, String name, Optional<Ratio> amount) {

    /** What a word means by itself. A species stands for its substance under its own name. */
    public static Allergen of(String word) {
        return AllergenWords.read(word);
    }

    /**
     * What a word means together with the names given for it, such as {@code fish} with {@code hake, cod}; one for
     * each name. A name that belongs to another substance does not change what the word says: both are then given.
     *
     * @param word as written
     * @param names one or several, between commas, slashes or {@code and}; empty when nobody has named it
     */
    public static Set<Allergen> of(String word, String names) {
        Allergen plain = of(word);
        Set<Allergen> all = new LinkedHashSet<>();
        for (String name : AllergenWords.names(names)) {
            all.addAll(plain.under(name));
        }
        return all.isEmpty() ? Set.of(plain) : all;
    }

    private List<Allergen> under(String given) {
        Allergen meant = of(given);
        if (substance.isEmpty()) {
            return List.of(new Allergen(word, substance, given, amount));
        }
        if (meant.substance.isEmpty()) {
            return List.of(new Allergen(word, substance, given, amount));
        }
        boolean within =
                substance.get().covers().containsAll(meant.substance.get().covers());
        return within ? List.of(meant) : List.of(this, meant);
    }

    /** The same with that much of it measured, in mg/kg or mg/l. */
    public Allergen measured(Ratio measured) {
        return new Allergen(word, substance, name, Optional.of(measured));
    }

    /** Whether it is sulphur dioxide or sulphites, which alone are measured. */
    public boolean isSulphites() {
        return substance.equals(Optional.of(Substance.SULPHITES));
    }

    /** What to ask for so that it is named, such as {@code Name the nut.}; empty when it is. */
    public Optional<String> ask() {
        return substance
                .filter(known -> known.broad() || !known.namesItself() && name.isEmpty())
                .map(known -> "Name the " + known.sort() + ".");
    }

    /** Its word, with its name where that says more: {@code fish (hake)}, {@code almond}. */
    public String inWords() {
        return name.isEmpty() || name.equals(word) ? word : word + " (" + name + ")";
    }
}
