package etamine.widgets;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;

/** The wavy line below the part of a text that was not understood. */
final class Wave {
    /** Its height. */
    static final int HEIGHT = 5;

    private static final int STEP = 3;
    private static final int PADDING = 8; // of the native field, before its first character

    private Wave() {}

    static void draw(Event event, Canvas below, Text text, EntryLines.Line line) {
        int length = text.getCharCount();
        int from = line.trouble().map(EntryLines.Trouble::from).orElse(0);
        int to = Math.min(length, line.trouble().map(EntryLines.Trouble::to).orElse(0));
        boolean same = line.text().equals(text.getText());
        if (!same || to <= from) {
            return;
        }
        int left = PADDING + place(text, from);
        int right = Math.min(PADDING + place(text, to), below.getSize().x - STEP);
        Color color = Palette.of(below).text(Tone.BAD);
        event.gc.setForeground(color);
        for (int x = left, up = 0; x < right; x += STEP, up = 1 - up) {
            event.gc.drawLine(x, up == 0 ? 3 : 1, x + STEP, up == 0 ? 1 : 3);
        }
    }

    /** Where a character stands; only the caret knows, so it is sent there and back. */
    private static int place(Text text, int character) {
        Point selection = text.getSelection();
        text.setSelection(character);
        int x = text.getCaretLocation().x;
        text.setSelection(selection);
        return x;
    }
}
