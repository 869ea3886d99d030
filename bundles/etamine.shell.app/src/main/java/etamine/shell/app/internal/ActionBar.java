package etamine.shell.app.internal;

import etamine.shell.BenchAction;
import etamine.widgets.Icons;
import etamine.widgets.Spoken;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

/** What can be done on the bench, as buttons. */
final class ActionBar extends Composite {
    private final ToolBar bar;
    private List<BenchAction> shown = List.of();

    ActionBar(Composite parent) {
        super(parent, SWT.NONE);
        setLayout(new FillLayout());
        bar = Spoken.id(new ToolBar(this, SWT.FLAT | SWT.RIGHT | SWT.WRAP), "actions");
        Spoken.name(bar, "What can be done here");
    }

    /** Shows these actions; the same ones only get their state looked at again. */
    void show(List<BenchAction> actions) {
        boolean same = words(actions).equals(words(shown));
        shown = List.copyOf(actions);
        if (!same) {
            rebuild();
        }
        for (int at = 0; at < shown.size(); at++) {
            bar.getItem(at).setEnabled(possible(shown.get(at)));
        }
    }

    static boolean possible(BenchAction action) {
        return Guard.value(
                        "asking whether an action is possible",
                        () -> action.enabled().getAsBoolean())
                .orElse(false);
    }

    @Override
    public boolean setFocus() {
        return !shown.isEmpty() && bar.setFocus();
    }

    private void rebuild() {
        for (ToolItem item : bar.getItems()) {
            item.dispose();
        }
        for (int at = 0; at < shown.size(); at++) {
            BenchAction action = shown.get(at);
            int place = at;
            ToolItem item = new ToolItem(bar, SWT.PUSH);
            item.setText(action.label());
            if (!action.icon().isEmpty()) {
                item.setImage(Icons.small(bar, action.icon()));
            }
            item.setToolTipText(
                    action.key() == 0 ? action.label() : action.label() + " (" + KeyText.of(action.key()) + ")");
            item.setData("id", "action:" + action.id());
            item.addListener(SWT.Selection, event -> shown.get(place).run().run());
        }
    }

    private static List<String> words(List<BenchAction> actions) {
        return actions.stream()
                .map(action -> action.id() + "/" + action.label() + "/" + action.icon())
                .toList();
    }
}
