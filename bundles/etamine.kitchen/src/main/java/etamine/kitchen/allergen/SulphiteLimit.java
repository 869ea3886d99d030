package etamine.kitchen.allergen;

import etamine.measures.Ratio;

/**
 * From which amount a list asks to declare sulphites.
 *
 * @param amount mg/kg or mg/l as total SO2, reckoned on what is ready to eat
 * @param inclusive whether exactly that much is declared already
 */
public record SulphiteLimit(Ratio amount, boolean inclusive) {

    /** Whether so much has to be declared. */
    public boolean reachedBy(Ratio measured) {
        int order = measured.compareTo(amount);
        return inclusive ? order >= 0 : order > 0;
    }

    /** The limit in words: {@code above 10 mg/kg}, {@code from 10 mg/kg}. */
    public String inWords() {
        return (inclusive ? "from " : "above ") + amount + " mg/kg";
    }
}
