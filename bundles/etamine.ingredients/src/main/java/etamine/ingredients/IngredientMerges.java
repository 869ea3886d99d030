package etamine.ingredients;

import etamine.base.Problem;
import etamine.kitchen.item.ItemMentions.Mention;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Finds ingredients that are there twice and makes them one, in the whole book. Thread-safe. It knows the uses that the
 * installed modules know.
 */
@ProviderType
public interface IngredientMerges {

    /** Pairs of ingredients that may be the same, the likeliest first. */
    List<Likeness> duplicates();

    /** Every place in the book that names the item, of every module. */
    List<Mention> mentions(String item);

    /** What {@link #merge} would do, tried and given up again: nothing is written. */
    Preview preview(String from, String into);

    /**
     * Puts one ingredient in the place of another everywhere, in one transaction that undo takes back. The one that
     * goes is kept in the book, unlisted, since the history of the stock names it.
     *
     * @param from the one that goes
     * @param into the one that stays; it gains what only the other has
     */
    Change merge(String from, String into);

    /**
     * Two ingredients that may be the same.
     *
     * @param one the one that more of the book speaks of: the likely survivor
     * @param other the other one
     * @param why what makes them alike, in words
     */
    record Likeness(Ingredient one, Ingredient other, String why) {}

    /**
     * What a merge would do.
     *
     * @param result the survivor as it would be
     * @param mentions the places that would be rewritten
     * @param remarks what changes in meaning, each as a sentence
     * @param problems why it cannot be done, each with what to do; empty when it can
     */
    record Preview(Ingredient result, List<Mention> mentions, List<String> remarks, List<Problem> problems) {
        /** Copies the lists. */
        public Preview {
            mentions = List.copyOf(mentions);
            remarks = List.copyOf(remarks);
            problems = List.copyOf(problems);
        }
    }
}
