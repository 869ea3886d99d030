package etamine.widgets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/**
 * Labelled fields in two columns that become one when it is narrow, scrolled when it is low. Each field has its label
 * above and a line for its problem below. Ids are given to the native fields for tests.
 */
public final class FormPane extends Composite {
    private final ScrolledComposite scroller;
    private final Composite content;
    private final List<EntryField<?>> entries = new ArrayList<>();
    private int updates;

    /** An empty form. */
    public FormPane(Composite parent) {
        super(parent, SWT.NONE);
        setLayout(new FillLayout());
        scroller = new ScrolledComposite(this, SWT.V_SCROLL);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        scroller.setShowFocusedControl(true);
        content = new Composite(scroller, SWT.NONE);
        content.setLayout(new FlowColumns());
        scroller.setContent(content);
        scroller.addListener(SWT.Resize, event -> reflow());
        TabIn.follow(this);
    }

    /** A line above the fields that follow. */
    public Label heading(String text) {
        Label label = new Label(cell(true), SWT.NONE);
        label.setText(text);
        label.setFont(Fonts.bold(this));
        return label;
    }

    /** Says something in a remark of this form; an empty one takes no room. */
    public void say(Label remark, String sentence) {
        if (!remark.getText().equals(sentence) || remark.getVisible() == sentence.isEmpty()) {
            remark.setText(sentence);
            remark.setVisible(!sentence.isEmpty());
            remark.getParent().setVisible(!sentence.isEmpty());
            ((GridData) remark.getLayoutData()).exclude = sentence.isEmpty();
            reflow();
        }
    }

    /** A sentence across the form. */
    public Label remark(String text) {
        Label label = new Label(cell(true), SWT.WRAP);
        label.setText(text);
        label.setForeground(Palette.of(this).quiet());
        label.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        return label;
    }

    /** A line of text. */
    public Text text(String label, String id) {
        return field(label, id, false, parent -> new Text(parent, SWT.BORDER | SWT.SINGLE));
    }

    /** A short line of text; two stand where one field would. */
    public Text small(String label, String id) {
        return field(label, id, FlowColumns.HALF, parent -> new Text(parent, SWT.BORDER | SWT.SINGLE));
    }

    /** Any small control below a label; two stand where one field would. */
    public <C extends Control> C small(String label, String id, Function<Composite, C> make) {
        return field(label, id, FlowColumns.HALF, make);
    }

    /** Several lines of text across the form. */
    public Text area(String label, String id, int lines) {
        Text text =
                field(label, id, true, parent -> new Text(parent, SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL));
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.heightHint = text.getLineHeight() * lines;
        text.setLayoutData(data);
        text.addListener(SWT.Traverse, FormPane::tabOut);
        return text;
    }

    /** Something that is so or not. */
    public Button check(String label, String id) {
        Button button = new Button(cell(false), SWT.CHECK);
        button.setText(label);
        return Spoken.id(button, id);
    }

    /** A quantity. */
    public QuantityField quantity(String label, String id) {
        return field(label, id, false, QuantityField::new);
    }

    /** An amount of money. */
    public MoneyField money(String label, String id, Currency currency) {
        return field(label, id, false, parent -> new MoneyField(parent, currency));
    }

    /** A number within limits. */
    public NumberField number(String label, String id, Function<Composite, NumberField> make) {
        return field(label, id, false, make);
    }

    /** A day. */
    public DayField day(String label, String id, Supplier<LocalDate> today) {
        return field(label, id, false, parent -> new DayField(parent, today));
    }

    /** One of many. */
    public ChoiceField choice(String label, String id, List<Choice> choices) {
        return field(label, id, false, parent -> new ChoiceField(parent, choices));
    }

    /** A line of text across the form. */
    public Text line(String label, String id) {
        return field(label, id, true, parent -> new Text(parent, SWT.BORDER | SWT.SINGLE));
    }

    /** An empty list to pick from below a label. */
    public Combo pick(String label, String id, boolean wide) {
        return field(label, id, wide, PickList::in);
    }

    /** Any control below a label. */
    public <C extends Control> C field(String label, String id, boolean wide, Function<Composite, C> make) {
        return field(label, id, wide ? FlowColumns.WIDE : FlowColumns.ONE, make);
    }

    private <C extends Control> C field(String label, String id, Integer room, Function<Composite, C> make) {
        Composite cell = cell(room);
        Label caption = new Label(cell, SWT.NONE);
        caption.setText(label);
        caption.setFont(Fonts.small(this));
        caption.setForeground(Palette.of(this).quiet());
        C control = make.apply(cell);
        control.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        if (control instanceof EntryField<?> entry) {
            entries.add(entry);
            Spoken.id(entry.control(), id);
            Spoken.label(entry.control(), caption);
        } else {
            Spoken.id(control, id);
            Spoken.label(control, caption);
        }
        return control;
    }

    /** Any control across the form, without a label. */
    public <C extends Control> C wide(Function<Composite, C> make) {
        C control = make.apply(cell(true));
        control.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        return control;
    }

    /** Shows a problem below a control of this form; an empty sentence takes it away. */
    public void problem(Control control, String sentence) {
        if (ProblemLine.below(control, sentence)) {
            reflow();
        }
    }

    /** Changes many things of the form and lays it out once. */
    public void update(Runnable changes) {
        updates++;
        setRedraw(false);
        try {
            changes.run();
        } finally {
            updates--;
            reflow();
            setRedraw(true);
        }
    }

    /** Shows the problems of all entry fields, puts the keyboard in the first; answers whether there are none. */
    public boolean check() {
        List<EntryField<?>> wrong = entries.stream()
                .filter(entry -> !entry.isDisposed() && !entry.check())
                .toList();
        wrong.stream().findFirst().ifPresent(EntryField::setFocus);
        return wrong.isEmpty();
    }

    /** Lays the fields out again, after controls were added or hidden. */
    public void reflow() {
        if (updates > 0) {
            return;
        }
        int width = scroller.getClientArea().width;
        if (width > 0) {
            scroller.setMinHeight(content.computeSize(width, SWT.DEFAULT).y);
        }
        content.layout(true, true);
    }

    @Override
    public boolean setFocus() {
        // A window that closes hands the focus on among what is already gone.
        return !content.isDisposed() && content.setFocus();
    }

    /** Lays out the form that holds this control, if one does. */
    static void reflow(Control control) {
        for (Composite at = control.getParent(); at != null; at = at.getParent()) {
            if (at instanceof FormPane form) {
                form.reflow();
                return;
            }
        }
    }

    private Composite cell(boolean wide) {
        return cell(wide ? FlowColumns.WIDE : FlowColumns.ONE);
    }

    private Composite cell(Integer room) {
        Composite cell = new Composite(content, SWT.NONE);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 2;
        cell.setLayout(layout);
        cell.setLayoutData(room);
        return cell;
    }

    private static void tabOut(org.eclipse.swt.widgets.Event event) {
        event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
    }
}
