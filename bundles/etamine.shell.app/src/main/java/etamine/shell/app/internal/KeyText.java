package etamine.shell.app.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;

/** How a key is written for people. */
final class KeyText {
    private static final Map<Integer, String> NAMES = Map.ofEntries(
            Map.entry((int) SWT.DEL, "Delete"),
            Map.entry(SWT.INSERT, "Insert"),
            Map.entry((int) SWT.CR, "Enter"),
            Map.entry((int) SWT.ESC, "Escape"),
            Map.entry((int) ' ', "Space"),
            Map.entry(SWT.ARROW_LEFT, "Left"),
            Map.entry(SWT.ARROW_RIGHT, "Right"),
            Map.entry(SWT.ARROW_UP, "Up"),
            Map.entry(SWT.ARROW_DOWN, "Down"),
            Map.entry(SWT.HOME, "Home"),
            Map.entry(SWT.END, "End"));

    private KeyText() {}

    static String of(int accelerator) {
        boolean mac = SWT.getPlatform().equals("cocoa");
        List<String> words = new ArrayList<>();
        add(words, accelerator, SWT.CTRL, "Ctrl");
        add(words, accelerator, SWT.COMMAND, "Cmd");
        add(words, accelerator, SWT.ALT, mac ? "Option" : "Alt");
        add(words, accelerator, SWT.SHIFT, "Shift");
        words.add(key(accelerator & SWT.KEY_MASK));
        return String.join("+", words);
    }

    /** Whether a key can be taken from the whole window without taking it from somebody's typing. */
    static boolean safeEverywhere(int accelerator) {
        int key = accelerator & SWT.KEY_MASK;
        boolean function = key >= SWT.F1 && key <= SWT.F15;
        return function || (accelerator & (SWT.CTRL | SWT.COMMAND | SWT.ALT)) != 0;
    }

    private static void add(List<String> words, int accelerator, int modifier, String word) {
        if ((accelerator & modifier) != 0) {
            words.add(word);
        }
    }

    private static String key(int key) {
        if (key >= SWT.F1 && key <= SWT.F15) {
            return "F" + (key - SWT.F1 + 1);
        }
        return NAMES.getOrDefault(key, String.valueOf(Character.toUpperCase((char) key)));
    }
}
