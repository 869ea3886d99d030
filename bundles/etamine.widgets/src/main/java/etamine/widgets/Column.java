package etamine.widgets;

import java.util.Comparator;
import java.util.function.Function;

/**
 * A column of a {@link ListTable}.
 *
 * @param heading what stands above it
 * @param weight its share of the width
 * @param figures whether it holds figures, set to the right
 * @param text what a cell says
 * @param order how rows sort by it
 * @param icon the name of a cell's icon; empty for none
 * @param tone how a cell's text should be seen
 * @param letters how many letters it keeps room for when columns of words give way
 * @param <T> the row
 */
public record Column<T>(
        String heading,
        int weight,
        boolean figures,
        Function<T, String> text,
        Comparator<T> order,
        Function<T, String> icon,
        Function<T, Tone> tone,
        int letters) {

    private static final Function<Object, String> NO_ICON = row -> "";

    /** Words, sorted as words. */
    public static <T> Column<T> words(String heading, int weight, Function<T, String> text) {
        Comparator<T> order = Comparator.comparing(text, String.CASE_INSENSITIVE_ORDER);
        return new Column<>(heading, weight, false, text, order, noIcon(), row -> Tone.PLAIN, 0);
    }

    /** Figures, set to the right, sorted by their value. */
    public static <T> Column<T> figures(String heading, int weight, Function<T, String> text, Comparator<T> order) {
        return new Column<>(heading, weight, true, text, order, noIcon(), row -> Tone.PLAIN, 0);
    }

    /** The same column sorted otherwise. */
    public Column<T> sorted(Comparator<T> otherOrder) {
        return new Column<>(heading, weight, figures, text, otherOrder, icon, tone, letters);
    }

    /** The same column with icons before the text. */
    public Column<T> withIcon(Function<T, String> name) {
        return new Column<>(heading, weight, figures, text, order, name, tone, letters);
    }

    /** The same column with tones; say in words or with an icon what the tone says. */
    public Column<T> withTone(Function<T, Tone> how) {
        return new Column<>(heading, weight, figures, text, order, icon, how, letters);
    }

    /** The same column keeping room for so many letters when there is not enough for all. */
    public Column<T> keeping(int wanted) {
        return new Column<>(heading, weight, figures, text, order, icon, tone, wanted);
    }

    /** Whether cells may have icons, without asking for any. */
    boolean hasIcons() {
        return !NO_ICON.equals(icon);
    }

    @SuppressWarnings("unchecked") // it looks at no row
    private static <T> Function<T, String> noIcon() {
        return (Function<T, String>) (Function<?, String>) NO_ICON;
    }
}
