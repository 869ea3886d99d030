package etamine.shell.app.internal;

import etamine.shell.BenchAction;
import etamine.widgets.Icons;
import etamine.widgets.Spoken;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

/** What can be done on the bench, as buttons. */
final class ActionBar extends Composite {
    private static final int SPACING = 2;

    private final List<ToolItem> items = new ArrayList<>();
    private List<BenchAction> shown = List.of();

    ActionBar(Composite parent) {
        super(parent, SWT.NONE);
        RowLayout layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.spacing = SPACING;
        setLayout(layout);
        Spoken.id(this, "actions");
        addListener(SWT.Resize, event -> fit());
    }

    /** Shows these actions; the same ones only get their state looked at again. */
    void show(List<BenchAction> actions) {
        boolean same = words(actions).equals(words(shown));
        shown = List.copyOf(actions);
        if (!same) {
            rebuild();
        }
        for (int at = 0; at < shown.size(); at++) {
            items.get(at).setEnabled(possible(shown.get(at)));
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
        return !items.isEmpty()
                && !items.get(0).isDisposed()
                && items.get(0).getParent().setFocus();
    }

    private void rebuild() {
        items.forEach(item -> item.getParent().dispose());
        items.clear();
        for (int at = 0; at < shown.size(); at++) {
            items.add(item(at));
        }
        fit();
    }

    /** Where a single row has no room for all words, the last actions keep only their icons; their tips say the rest. */
    private void fit() {
        int room = getClientArea().width;
        if (room <= 0) {
            return;
        }
        int[] widths = new int[items.size()];
        boolean[] bare = new boolean[items.size()];
        int sum = SPACING * 4;
        for (int at = 0; at < widths.length; at++) {
            widths[at] = width(at, shown.get(at).label());
            sum += widths[at] + SPACING;
        }
        for (int at = widths.length - 1; at > 0 && sum > room; at--) {
            bare[at] = items.get(at).getImage() != null;
            sum -= bare[at] ? widths[at] - width(at, "") : 0;
        }
        for (int at = 0; at < widths.length; at++) {
            items.get(at).setText(bare[at] && sum <= room ? "" : shown.get(at).label());
        }
        requestLayout();
    }

    private int width(int at, String label) {
        ToolItem item = items.get(at);
        if (!item.getText().equals(label)) {
            item.setText(label);
        }
        return item.getParent().computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
    }

    /** Each action has a bar of its own, so that the row wraps when it is narrow. */
    private ToolItem item(int place) {
        BenchAction action = shown.get(place);
        ToolBar bar = new ToolBar(this, SWT.FLAT | SWT.RIGHT);
        ToolItem item = new ToolItem(bar, SWT.PUSH);
        item.setText(action.label());
        if (!action.icon().isEmpty()) {
            Dressing.of(bar, () -> {
                item.setImage(Icons.small(bar, action.icon()));
                fit();
            });
        }
        item.setToolTipText(
                action.key() == 0 ? action.label() : action.label() + " (" + KeyText.of(action.key()) + ")");
        item.setData("id", "action:" + action.id());
        item.addListener(SWT.Selection, event -> shown.get(place).run().run());
        Spoken.name(bar, action.label());
        return item;
    }

    private static List<String> words(List<BenchAction> actions) {
        return actions.stream()
                .map(action -> action.id() + "/" + action.label() + "/" + action.icon())
                .toList();
    }
}
