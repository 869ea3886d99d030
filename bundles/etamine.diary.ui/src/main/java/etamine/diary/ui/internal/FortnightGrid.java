package etamine.diary.ui.internal;

import etamine.widgets.Fonts;
import etamine.widgets.NumberField;
import etamine.widgets.Palette;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/**
 * Two weeks as a calendar of fields, a row a week from Monday. A field is saved when it is left or Enter is pressed.
 */
final class FortnightGrid extends Composite {
    private static final int WEEK = 7;

    private final List<Cell> cells = new ArrayList<>();
    private final BiConsumer<LocalDate, OptionalInt> save;
    private final Consumer<LocalDate> choose;

    FortnightGrid(Composite parent, BiConsumer<LocalDate, OptionalInt> save, Consumer<LocalDate> choose) {
        super(parent, SWT.NONE);
        this.save = save;
        this.choose = choose;
        GridLayout layout = new GridLayout(WEEK, true);
        layout.horizontalSpacing = 8;
        setLayout(layout);
        for (int i = 0; i < DiaryModel.FORTNIGHT; i++) {
            cells.add(new Cell(i));
        }
    }

    void show(List<DayCell> days) {
        for (int i = 0; i < cells.size(); i++) {
            cells.get(i).show(days.get(i));
        }
        layout(true, true);
    }

    /** Puts the keyboard into the field of that day, or the first one. */
    void focusOn(LocalDate date) {
        cells.stream()
                .filter(cell -> date.equals(cell.date))
                .findFirst()
                .orElse(cells.get(0))
                .field
                .setFocus();
    }

    private final class Cell {
        private final Label heading;
        private final NumberField field;
        private final Label note;
        private LocalDate date = LocalDate.EPOCH;
        private Optional<BigDecimal> stored = Optional.empty();

        Cell(int place) {
            Composite box = new Composite(FortnightGrid.this, SWT.NONE);
            box.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
            GridLayout layout = new GridLayout();
            layout.marginWidth = 0;
            layout.marginHeight = 0;
            layout.verticalSpacing = 2;
            box.setLayout(layout);
            heading = new Label(box, SWT.NONE);
            heading.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
            field = new NumberField(box, "0", "100000", 0);
            field.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
            field.control().setMessage("");
            Spoken.id(field.control(), "covers:" + place);
            Spoken.label(field.control(), heading);
            note = new Label(box, SWT.NONE);
            note.setFont(Fonts.small(note));
            note.setForeground(Palette.of(note).text(Tone.QUIET));
            note.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
            field.control().addListener(SWT.FocusIn, event -> choose.accept(date));
            field.control().addListener(SWT.FocusOut, event -> leave());
            field.control().addListener(SWT.DefaultSelection, event -> leave());
        }

        private void leave() {
            if (field.problem().isEmpty() && !field.value().equals(stored)) {
                stored = field.value();
                OptionalInt covers = stored.map(number -> OptionalInt.of(number.intValueExact()))
                        .orElse(OptionalInt.empty());
                save.accept(date, covers);
            }
        }

        private void show(DayCell day) {
            Optional<BigDecimal> covers = day.covers().map(BigDecimal::valueOf);
            boolean typing = field.control().isFocusControl()
                    && date.equals(day.date())
                    && !field.value().equals(stored);
            date = day.date();
            heading.setText(day.heading());
            heading.setFont(day.today() ? Fonts.bold(heading) : Fonts.plain(heading));
            note.setText(day.note());
            if (!typing) {
                field.set(covers);
                stored = covers;
            }
        }
    }
}
