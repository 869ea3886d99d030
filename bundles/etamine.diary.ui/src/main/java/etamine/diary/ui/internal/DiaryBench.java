package etamine.diary.ui.internal;

import etamine.base.Subject;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.EditGrid;
import etamine.widgets.FormPane;
import etamine.widgets.GridColumn;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The fortnight above; below it the menu mix, and what was sold and is stated for the chosen day. */
final class DiaryBench implements Bench {
    private static final String MIX = "mix";

    private final Frame frame;
    private final DiaryModel model;
    private final KitchenNames names;
    private final FortnightGrid fortnight;
    private final EditGrid mix;
    private final EditGrid sold;
    private final EditGrid stated;
    private Label soldHeading;
    private Label statedHeading;
    private LocalDate framed;
    private LocalDate chosen;

    DiaryBench(Composite parent, Frame frame, DiaryModel model, KitchenNames names) {
        this.frame = frame;
        this.model = model;
        this.names = names;
        this.framed = frame.day();
        this.chosen = framed;
        Composite root = new Composite(parent, SWT.NONE);
        root.setLayout(new GridLayout());
        fortnight = new FortnightGrid(root, this::saveCovers, this::choose);
        fortnight.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        SashForm sash = new SashForm(root, SWT.HORIZONTAL);
        sash.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        FormPane mixPane = new FormPane(sash);
        mixPane.heading("Menu mix");
        mix = mixPane.wide(this::mixGrid);
        FormPane dayPane = new FormPane(sash);
        soldHeading = dayPane.heading("Sold");
        sold = dayPane.wide(this::soldGrid);
        statedHeading = dayPane.heading("Expected use, stated");
        stated = dayPane.wide(this::statedGrid);
        dayPane.remark("What is stated here wins over what covers and menu mix come to.");
        refresh();
    }

    private EditGrid mixGrid(Composite cell) {
        List<GridColumn> columns = List.of(
                GridColumn.entry("Recipe", 5).completing(names::completeRecipe), GridColumn.entry("Per cover", 2));
        return new EditGrid(cell, "grid:mix", columns, (about, row, cells) -> save(model.editMix(row, cells)));
    }

    private EditGrid soldGrid(Composite cell) {
        List<GridColumn> columns = List.of(
                GridColumn.entry("Recipe", 5).completing(names::completeRecipe), GridColumn.entry("Portions", 2));
        return new EditGrid(
                cell,
                "grid:sold",
                columns,
                (about, row, cells) -> save(model.editSold(LocalDate.parse(about), row, cells)));
    }

    private EditGrid statedGrid(Composite cell) {
        List<GridColumn> columns = List.of(
                GridColumn.entry("Ingredient", 5).completing(names::completeItem), GridColumn.entry("Quantity", 3));
        return new EditGrid(
                cell,
                "grid:stated",
                columns,
                (about, row, cells) -> save(model.editStated(LocalDate.parse(about), row, cells)));
    }

    private Optional<String> save(Attempt attempt) {
        if (attempt instanceof Attempt.Refused refused) {
            return Optional.of(refused.sentence());
        }
        Attempt.Save save = (Attempt.Save) attempt;
        work(save.label(), save.work());
        return Optional.empty();
    }

    private void saveCovers(LocalDate date, OptionalInt covers) {
        work("Saving covers of " + model.title(date), () -> model.saveCovers(date, covers));
    }

    private void work(String label, Runnable work) {
        frame.work(
                label,
                progress -> {
                    work.run();
                    return label;
                },
                done -> refresh());
    }

    private void choose(LocalDate date) {
        if (!date.equals(chosen)) {
            chosen = date;
            showDay();
        }
        frame.explain(model.explain(date));
    }

    private void showDay() {
        soldHeading.setText("Sold on " + model.shortTitle(chosen));
        statedHeading.setText("Use stated for " + model.shortTitle(chosen));
        soldHeading.requestLayout();
        statedHeading.requestLayout();
        sold.show(chosen.toString(), model.sold(chosen));
        stated.show(chosen.toString(), model.stated(chosen));
    }

    private void turn(int weeks) {
        chosen = chosen.plusWeeks(weeks);
        refresh();
        fortnight.focusOn(chosen);
    }

    @Override
    public List<BenchAction> actions() {
        return List.of(
                BenchAction.of("earlier", "Earlier", "previous", () -> turn(-2)).onKey(SWT.MOD1 | SWT.PAGE_UP),
                BenchAction.of("later", "Later", "next", () -> turn(2)).onKey(SWT.MOD1 | SWT.PAGE_DOWN));
    }

    @Override
    public void refresh() {
        if (!frame.day().equals(framed)) {
            framed = frame.day();
            chosen = framed;
        }
        fortnight.show(model.fortnight(chosen));
        mix.show(MIX, model.mix());
        showDay();
    }

    @Override
    public void show(Subject subject) {
        try {
            chosen = LocalDate.parse(subject.id());
            refresh();
            fortnight.focusOn(chosen);
        } catch (DateTimeParseException unknown) {
            fortnight.focusOn(chosen);
        }
    }

    @Override
    public void focus() {
        fortnight.focusOn(chosen);
    }
}
