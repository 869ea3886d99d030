package etamine.shell.app.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.widgets.Clip;
import etamine.widgets.Fonts;
import etamine.widgets.Icons;
import etamine.widgets.Palette;
import etamine.widgets.Spoken;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

/** Explains what is selected: the figure, where it comes from, and the figures it was made from. */
final class Slate extends Composite {
    private static final String NOTHING = "Select a figure or a row: what it is made of stands here.";
    private static final int LEAST = 150;
    private final Consumer<Subject> open;
    private final Label title;
    private final Label value;
    private final Label source;
    private final Tree tree;
    private Optional<Explanation> shown = Optional.empty();

    Slate(Composite parent, Consumer<Subject> open, Runnable close) {
        super(parent, SWT.NONE);
        this.open = open;
        setBackground(Palette.of(this).paper());
        setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 12;
        layout.marginHeight = 8;
        setLayout(layout);
        Label head = new Label(this, SWT.NONE);
        head.setText("The slate");
        head.setForeground(Palette.of(this).quiet());
        head.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        closeButton(close);
        title = line("slate:title");
        title.setFont(Fonts.bold(this));
        value = line("slate:value");
        value.setFont(Fonts.figure(this));
        source = line("slate:source");
        source.setForeground(Palette.of(this).quiet());
        tree = buildTree();
        show(Optional.empty());
    }

    /** Shows an explanation, or a hint when nothing is selected. */
    void show(Optional<Explanation> explanation) {
        shown = explanation;
        put(title, explanation.map(Explanation::title).orElse(""));
        put(value, explanation.map(Explanation::value).orElse(""));
        put(source, explanation.map(Explanation::source).orElse(NOTHING));
        tree.setRedraw(false);
        tree.removeAll();
        explanation.ifPresent(whole -> whole.parts().forEach(part -> add(new TreeItem(tree, SWT.NONE), part, 1)));
        tree.setRedraw(true);
        tree.setVisible(tree.getItemCount() > 0);
        layout(true);
        share();
    }

    @Override
    public boolean setFocus() {
        return !tree.isDisposed() && tree.isVisible() && tree.setFocus();
    }

    private void closeButton(Runnable close) {
        ToolBar bar = new ToolBar(this, SWT.FLAT);
        ToolItem item = new ToolItem(bar, SWT.PUSH);
        item.setImage(Icons.small(bar, "close"));
        item.setToolTipText("Close the slate (F9)");
        item.setData("id", "slate:close");
        item.addListener(SWT.Selection, event -> close.run());
        Spoken.name(bar, "Close the slate");
    }

    private Label line(String id) {
        Label label = Spoken.id(new Label(this, SWT.WRAP), id);
        label.setForeground(Palette.of(this).ink());
        label.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        return label;
    }

    private static void put(Label label, String text) {
        label.setText(text.replace("&", "&&"));
        ((GridData) label.getLayoutData()).exclude = text.isEmpty();
        label.setVisible(!text.isEmpty());
    }

    private Tree buildTree() {
        Tree made = Spoken.id(new Tree(this, SWT.SINGLE | SWT.FULL_SELECTION), "slate:parts");
        made.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1));
        Spoken.name(made, "What the selected figure is made of");
        new TreeColumn(made, SWT.LEFT);
        new TreeColumn(made, SWT.RIGHT);
        made.addListener(SWT.Resize, event -> share());
        made.addListener(SWT.DefaultSelection, this::follow);
        made.addListener(SWT.Selection, this::tip);
        made.addListener(SWT.KeyDown, event -> {
            if ((event.stateMask & SWT.MOD1) != 0 && event.keyCode == 'c') {
                Clip.copy(made, shown.map(whole -> asText(whole, 0)).orElse(""));
            }
        });
        return made;
    }

    private void add(TreeItem item, Explanation part, int depth) {
        item.setText(0, part.title());
        item.setText(1, part.value());
        item.setData(part);
        if (!part.source().isEmpty()) {
            TreeItem origin = new TreeItem(item, SWT.NONE);
            origin.setText(0, part.source());
            origin.setForeground(Palette.of(this).quiet());
            origin.setFont(Fonts.small(this));
        }
        part.parts().forEach(child -> add(new TreeItem(item, SWT.NONE), child, depth + 1));
        item.setExpanded(depth <= 2);
    }

    private void follow(Event event) {
        if (event.item.getData() instanceof Explanation part) {
            part.subject().ifPresent(open);
        }
    }

    private void tip(Event event) {
        tree.setToolTipText(event.item.getData() instanceof Explanation part ? asText(part, 0) : null);
    }

    private void share() {
        int width = tree.getClientArea().width;
        tree.getColumn(1).pack();
        int figures = tree.getColumn(1).getWidth();
        tree.getColumn(0).setWidth(Math.max(LEAST, width - figures));
        tree.getColumn(1).setWidth(figures);
    }

    private static String asText(Explanation part, int depth) {
        StringBuilder text = new StringBuilder("  ".repeat(depth) + part.title() + "\t" + part.value());
        if (!part.source().isEmpty()) {
            text.append("\t").append(part.source());
        }
        part.parts().forEach(child -> text.append('\n').append(asText(child, depth + 1)));
        return text.toString();
    }
}
