package etamine.recipes;

import etamine.base.Printout;
import etamine.kitchen.allergen.DeclarationList;
import etamine.measures.Quantity;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Lays recipes out for paper: cards for the line and the wall, and the allergens of the menu. Wherever allergens,
 * temperatures or keeping times stand, the caution stands beside them. Thread-safe; there while papers can be written.
 */
@ProviderType
public interface Cards {

    /** Sheets that cards are made for. */
    enum Sheet {
        /** ISO 216 A4. */
        A4,
        /** US Letter. */
        LETTER
    }

    /**
     * How a card is wanted.
     *
     * @param sheet the sheet
     * @param large whether it is to be read on a wall
     * @param amount how much the card is for, such as 12 portions or 3 l; as written when empty
     * @param photo whether a card to be read in the hand shows the photo of the recipe, where there is one
     */
    record Terms(Sheet sheet, boolean large, Optional<Quantity> amount, boolean photo) {

        /** With a photo where there is one. */
        public Terms(Sheet sheet, boolean large, Optional<Quantity> amount) {
            this(sheet, large, amount, true);
        }

        /** The same on another sheet. */
        public Terms on(Sheet other) {
            return new Terms(other, large, amount, photo);
        }

        /** The same in another size of type. */
        public Terms large(boolean wall) {
            return new Terms(sheet, wall, amount, photo);
        }

        /** The same for so much. */
        public Terms forAmount(Optional<Quantity> wanted) {
            return new Terms(sheet, large, wanted, photo);
        }

        /** The same with the photo or without. */
        public Terms withPhoto(boolean wanted) {
            return new Terms(sheet, large, amount, wanted);
        }
    }

    /** A card, or why there is none. */
    sealed interface Card {

        /**
         * It is laid out.
         *
         * @param printout to save or print
         * @param remarks what scaling asks a cook to judge
         */
        record Laid(Printout printout, List<String> remarks) implements Card {
            /** Copies the list. */
            public Laid {
                remarks = List.copyOf(remarks);
            }
        }

        /**
         * It cannot be made.
         *
         * @param text a sentence that says what to do
         */
        record Impossible(String text) implements Card {}
    }

    /** The recipe as written, in normal type on the sheet that is usual where the house measures as it does. */
    Terms usual();

    /** The card of one recipe; a plate's has its components, plating and drinks. */
    Card card(String recipe, Terms terms);

    /**
     * The plates and drinks of the menu against the groups of a list. Marks differ in shape and letter, not only in
     * colour; unknown is marked as unknown.
     */
    Printout allergens(DeclarationList list, Terms terms);
}
