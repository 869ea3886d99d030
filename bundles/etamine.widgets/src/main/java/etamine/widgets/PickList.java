package etamine.widgets;

import java.util.Locale;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/**
 * A native list to pick from that follows letters while it is closed, which not every platform's own does: each press goes
 * to the next choice that begins so. A choice that is too long for its room is said in a tip.
 */
public final class PickList {
    private static final String OWN_TIP = "own tip";

    private PickList() {}

    /** An empty list to pick from. */
    public static Combo in(Composite parent) {
        Combo combo = new Combo(parent, SWT.READ_ONLY);
        combo.addListener(SWT.KeyDown, event -> byLetter(combo, event));
        combo.addListener(SWT.MouseEnter, event -> tip(combo));
        return combo;
    }

    private static void byLetter(Combo combo, Event event) {
        boolean plain = (event.stateMask & (SWT.MODIFIER_MASK & ~SWT.SHIFT)) == 0;
        if (!plain || !Character.isLetterOrDigit(event.character) || combo.getListVisible()) {
            return;
        }
        String letter = String.valueOf(event.character).toLowerCase(Locale.ROOT);
        int count = combo.getItemCount();
        for (int step = 1; step <= count; step++) {
            int at = (Math.max(0, combo.getSelectionIndex()) + step) % count;
            if (combo.getItem(at).toLowerCase(Locale.ROOT).startsWith(letter)) {
                pick(combo, at);
                event.doit = false;
                return;
            }
        }
    }

    private static void pick(Combo combo, int at) {
        if (at != combo.getSelectionIndex()) {
            combo.select(at);
            combo.notifyListeners(SWT.Selection, new Event());
        }
    }

    private static void tip(Combo combo) {
        boolean others = combo.getToolTipText() != null && combo.getData(OWN_TIP) == null;
        if (!others) {
            boolean cutOff = combo.computeSize(SWT.DEFAULT, SWT.DEFAULT).x > combo.getSize().x;
            combo.setToolTipText(cutOff ? combo.getText() : null);
            combo.setData(OWN_TIP, cutOff ? Boolean.TRUE : null);
        }
    }
}
