package etamine.widgets;

import java.util.List;
import java.util.function.Function;

/**
 * One column of an {@link EditGrid}.
 *
 * @param heading above it
 * @param weight its share of the width
 * @param editable whether it can be typed into
 * @param below whether it stands in a second line below the first columns
 * @param complete how to complete what is typed; nothing for none
 * @param hint an example that stands in an empty field; none when empty
 */
public record GridColumn(
        String heading,
        int weight,
        boolean editable,
        boolean below,
        Function<String, List<String>> complete,
        String hint) {
    /** A column to type into. */
    public static GridColumn entry(String heading, int weight) {
        return new GridColumn(heading, weight, true, false, typed -> List.of(), "");
    }

    /** A column to look at. */
    public static GridColumn figure(String heading, int weight) {
        return new GridColumn(heading, weight, false, false, typed -> List.of(), "");
    }

    /** The same with completions. */
    public GridColumn completing(Function<String, List<String>> completions) {
        return new GridColumn(heading, weight, editable, below, completions, hint);
    }

    /** The same in the second line of each row; its heading stands in its empty fields. Put these columns last. */
    public GridColumn under() {
        return new GridColumn(heading, weight, editable, true, complete, hint);
    }

    /** The same with an example in its empty field below the last row. */
    public GridColumn such(String example) {
        return new GridColumn(heading, weight, editable, below, complete, example);
    }
}
