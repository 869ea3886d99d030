package etamine.ingredients;

import etamine.base.Problem;
import java.util.List;

/** What became of a wish to change the ingredient list. */
public sealed interface Change {

    /**
     * It is in the book, or was there already.
     *
     * @param revision the revision to save against next; 0 after a removal
     */
    record Done(long revision) implements Change {}

    /**
     * Nothing was changed.
     *
     * @param problems why, each as a sentence that says what to do; not empty
     */
    record Refused(List<Problem> problems) implements Change {
        /** Copies the list. */
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
