package etamine.kitchen.recipe;

import java.util.List;

/**
 * How far a recipe is to be trusted.
 *
 * @param tested how often it was made with the same result
 * @param archived whether it is kept but no longer offered
 * @param tests what was weighed when it was made, oldest first
 */
public record Standing(int tested, boolean archived, List<BatchTest> tests) {

    /** Copies the list. */
    public Standing {
        tests = List.copyOf(tests);
    }

    /** Never made. */
    public static final Standing DRAFT = new Standing(0, false, List.of());

    /** The same with another number of good tries. */
    public Standing withTested(int changed) {
        return new Standing(changed, archived, tests);
    }

    /** The same, archived or not. */
    public Standing withArchived(boolean changed) {
        return new Standing(tested, changed, tests);
    }

    /** The same with other tests. */
    public Standing withTests(List<BatchTest> changed) {
        return new Standing(tested, archived, changed);
    }
}
