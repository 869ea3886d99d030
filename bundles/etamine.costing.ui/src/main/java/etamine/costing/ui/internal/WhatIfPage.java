package etamine.costing.ui.internal;

import etamine.base.Subject;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.ChoiceField;
import etamine.widgets.Column;
import etamine.widgets.Fonts;
import etamine.widgets.ListTable;
import etamine.widgets.Palette;
import etamine.widgets.Prompt;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.util.Comparator;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Sliders above, the whole menu as they would have it below; the book stays as it is until they are accepted. */
final class WhatIfPage implements CostPage {
    private static final String SAFE =
            "Nothing here touches the book. Accept writes it, in one step that undo takes back; discard forgets it.";
    private final Frame frame;
    private final WhatIfModel model;
    private final SashForm sash;
    private final ChoiceField choice;
    private final LeverPane levers;
    private final Label sentence;
    private final ListTable<TrialRow> plates;

    WhatIfPage(Composite parent, Frame frame, WhatIfModel model) {
        this.frame = frame;
        this.model = model;
        sash = new SashForm(parent, SWT.VERTICAL);
        Composite above = new Composite(sash, SWT.NONE);
        above.setLayout(tight(2));
        choice = new ChoiceField(above, List.of());
        Spoken.id(choice.control(), "field:try");
        choice.control().setMessage("What to try: cream: price, celeriac: yield, a portion, a menu price \u2026");
        Spoken.name(choice.control(), "What to try");
        choice.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        choice.control().addListener(SWT.DefaultSelection, event -> add());
        Button add = Spoken.id(new Button(above, SWT.PUSH), "action:try");
        add.setText("Try it");
        add.addListener(SWT.Selection, event -> add());
        levers = new LeverPane(above, model, this::moved);
        levers.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1));
        Composite below = new Composite(sash, SWT.NONE);
        below.setLayout(tight(1));
        sentence = Spoken.id(new Label(below, SWT.WRAP), "what-if:sentence");
        sentence.setFont(Fonts.bold(below));
        sentence.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        Label safe = new Label(below, SWT.WRAP);
        safe.setText(SAFE);
        safe.setForeground(Palette.of(below).quiet());
        safe.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        plates = new ListTable<>(below, "table:trial", TrialRow::id, columns())
                .whenEmpty("Nothing on the menu yet. What is written under Recipes with a menu price appears here.")
                .onSelect(rows -> rows.stream().findFirst().map(model::explain).ifPresent(frame::explain))
                .onOpen(row -> frame.go(new Subject("recipe", row.id())));
        plates.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        sash.setWeights(42, 58);
    }

    private static GridLayout tight(int columns) {
        GridLayout layout = new GridLayout(columns, false);
        layout.marginWidth = 0;
        layout.marginHeight = 4;
        return layout;
    }

    private static List<Column<TrialRow>> columns() {
        return List.of(
                Column.words("Plate", 6, TrialRow::name),
                Column.figures(
                        "Cost",
                        2,
                        TrialRow::costText,
                        Comparator.comparing(row -> row.plate().then().cost())),
                Column.<TrialRow>figures("Change", 1, TrialRow::changeText, Comparator.comparing(TrialRow::change))
                        .withTone(row -> row.change().signum() > 0
                                ? Tone.BAD
                                : row.change().signum() < 0 ? Tone.GOOD : Tone.PLAIN),
                Column.<TrialRow>figures(
                                "Food cost", 2, TrialRow::percentText, Comparator.comparing(TrialRow::percentThen))
                        .withIcon(row -> row.over() ? "warning" : "")
                        .withTone(row -> row.over() ? Tone.WARN : Tone.PLAIN),
                Column.figures(
                        "Contribution",
                        2,
                        TrialRow::contributionText,
                        Comparator.comparing(row -> row.plate().then().contribution())));
    }

    private void add() {
        choice.id()
                .ifPresentOrElse(
                        id -> {
                            if (model.add(id)) {
                                choice.setText("");
                                levers.show();
                                levers.focus(id);
                                moved();
                            } else {
                                frame.warn(
                                        "That has no price yet. Write one on the ingredient, or add an offer for it.");
                            }
                        },
                        () -> choice.check());
    }

    /** Repaints every plate; runs with every step of a slider. */
    private void moved() {
        WhatIfModel.Outcome outcome = model.outcome();
        boolean any = !model.moved().isEmpty();
        String notes = outcome.notes().isEmpty() ? "" : " " + String.join(" ", outcome.notes());
        String text = outcome.sentence(any) + notes;
        if (!text.equals(sentence.getText())) {
            sentence.setText(text.replace("&", "&&"));
            sentence.getParent().layout();
        }
        plates.setRows(outcome.rows());
        plates.selected().map(model::explain).ifPresent(frame::explain);
        frame.actionsChanged();
    }

    private void accept() {
        String list = String.join("\n", model.changes());
        if (Prompt.confirm(frame.window(), "Accept what is tried", list, "Write it into the book")) {
            frame.work("Writing what was tried", progress -> model.accept(), notes -> {
                model.discard();
                refresh();
                frame.say(notes.isEmpty() ? "It is in the book. Undo takes it back." : String.join(" ", notes));
            });
        }
    }

    private void discard() {
        model.discard();
        refresh();
        frame.say("Forgotten. The book is as it was.");
    }

    /** Puts out a plate's price and lines. */
    void tryPlate(String recipe) {
        model.addPlate(recipe);
        refresh();
    }

    @Override
    public Control control() {
        return sash;
    }

    @Override
    public List<BenchAction> actions() {
        return List.of(
                BenchAction.of("accept", "Accept", "good", this::accept)
                        .when(() -> !model.moved().isEmpty()),
                BenchAction.of("discard", "Discard", "close", this::discard)
                        .when(() -> !model.out().isEmpty()));
    }

    @Override
    public void refresh() {
        choice.setChoices(model.choices());
        levers.show();
        moved();
    }

    @Override
    public void show(Subject subject) {
        plates.select(subject.id());
    }

    @Override
    public void focus() {
        choice.setFocus();
    }
}
