package etamine.shell.app.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.kitchen.today.Call;
import etamine.kitchen.today.DayMark;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.Fonts;
import etamine.widgets.ListTable;
import etamine.widgets.Palette;
import etamine.widgets.Tone;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The calls, most pressing first, above what the picked day holds; Enter goes to where each is dealt with. */
final class PassBench implements Bench {
    private final Frame frame;
    private final PassStation pass;
    private final Label summary;
    private final ListTable<Call> calls;
    private final Label dayName;
    private final ListTable<DayMark> marks;

    PassBench(Composite parent, Frame frame, PassStation pass) {
        this.frame = frame;
        this.pass = pass;
        SashForm sash = new SashForm(parent, SWT.VERTICAL | SWT.SMOOTH);
        sash.setSashWidth(5);
        Composite upper = half(sash);
        summary = new Label(upper, SWT.WRAP);
        summary.setForeground(Palette.of(parent).quiet());
        summary.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        calls = callTable(upper);
        Composite lower = half(sash);
        dayName = new Label(lower, SWT.NONE);
        dayName.setFont(Fonts.bold(parent));
        dayName.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        marks = markTable(lower);
        sash.setWeights(66, 34);
        refresh();
    }

    @Override
    public List<BenchAction> actions() {
        return List.of(BenchAction.of("deal", "Go and deal with it", "next", this::deal)
                .onKey(SWT.MOD1 | SWT.CR)
                .when(() -> calls.selected().isPresent()));
    }

    @Override
    public void refresh() {
        calls.setRows(pass.calls());
        summary.setText(summary());
        dayName.setText(Sentences.LONG_DAY.format(pass.day()));
        marks.setRows(pass.marksOfDay());
        frame.actionsChanged();
    }

    @Override
    public void show(Subject subject) {
        calls.select(subject.id());
    }

    @Override
    public void focus() {
        calls.setFocus();
    }

    private ListTable<Call> callTable(Composite parent) {
        Comparator<Call> urgency = Comparator.comparing(Call::urgency).thenComparing(PassBench::dueOrLast);
        ListTable<Call> table = new ListTable<Call>(
                        parent,
                        "table:calls",
                        Call::id,
                        List.of(
                                Column.<Call>words("When", 2, PassBench::when)
                                        .sorted(urgency)
                                        .withIcon(PassBench::icon)
                                        .withTone(PassBench::tone),
                                Column.<Call>words("Call", 11, Call::text),
                                Column.<Call>figures("Due", 1, this::due, Comparator.comparing(PassBench::dueOrLast))))
                .whenEmpty("Nothing calls. The pass is clear.")
                .onSelect(this::selected)
                .onOpen(call -> frame.go(call.subject()));
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        return table;
    }

    private ListTable<DayMark> markTable(Composite parent) {
        ListTable<DayMark> table = new ListTable<DayMark>(
                        parent,
                        "table:day",
                        PassBench::key,
                        List.of(
                                Column.<DayMark>words("What", 2, mark -> kind(mark.kind()))
                                        .withIcon(mark -> DayCell.icon(mark.kind()))
                                        .sorted(Comparator.comparing(DayMark::kind)),
                                Column.words("On this day", 14, DayMark::text)))
                .whenEmpty("Nothing is written down for this day.")
                .onOpen(mark -> frame.go(mark.subject()));
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        return table;
    }

    private void selected(List<Call> selected) {
        frame.actionsChanged();
        if (selected.size() == 1) {
            Call call = selected.get(0);
            String source = call.due().isPresent() ? "due " + due(call) : "whenever there is time for it";
            frame.explain(Explanation.leaf(
                            call.text(), "", when(call) + "; " + source + ". Enter goes to where it is dealt with.")
                    .about(call.subject()));
        } else {
            frame.explainNothing();
        }
    }

    private void deal() {
        calls.selected().ifPresent(call -> frame.go(call.subject()));
    }

    private String summary() {
        List<Call> all = pass.calls();
        if (all.isEmpty()) {
            return "";
        }
        return count(all, Call.Urgency.NOW) + " now, " + count(all, Call.Urgency.TODAY) + " in the course of the day, "
                + count(all, Call.Urgency.SOON) + " when there is time";
    }

    private static long count(List<Call> all, Call.Urgency urgency) {
        return all.stream().filter(call -> call.urgency() == urgency).count();
    }

    private String due(Call call) {
        return call.due().map(due -> Sentences.due(due, pass.clock())).orElse("");
    }

    private static Instant dueOrLast(Call call) {
        return call.due().orElse(Instant.MAX);
    }

    private static String when(Call call) {
        return switch (call.urgency()) {
            case NOW -> "Now";
            case TODAY -> "Today";
            case SOON -> "Soon";
        };
    }

    private static String icon(Call call) {
        return switch (call.urgency()) {
            case NOW -> "warning";
            case TODAY -> "cut-off";
            case SOON -> "note";
        };
    }

    private static Tone tone(Call call) {
        return switch (call.urgency()) {
            case NOW -> Tone.BAD;
            case TODAY -> Tone.WARN;
            case SOON -> Tone.QUIET;
        };
    }

    private static String kind(DayMark.Kind kind) {
        return switch (kind) {
            case COVERS -> "Covers";
            case DELIVERY -> "Delivery";
            case CUT_OFF -> "Cut-off";
            case EXPIRY -> "Last day";
            case NOTE -> "Note";
        };
    }

    private static String key(DayMark mark) {
        return mark.day() + "/" + mark.kind() + "/" + mark.text() + "/" + mark.subject();
    }

    private static Composite half(Composite parent) {
        Composite half = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 2;
        half.setLayout(layout);
        return half;
    }
}
