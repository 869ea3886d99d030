package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.testing.DisplayRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class EntryLinesTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private final List<String> rows = new ArrayList<>(List.of("1 kg leeks", "2 l stock", "3 ea eggs"));
    private final List<String> done = new ArrayList<>();
    private Shell shell;
    private EntryLines lines;

    @BeforeEach
    void open() {
        shell = DISPLAY.shell(500, 900);
        lines = new EntryLines(shell, "lines", "amount, item", List.of("cost"), new Kept());
        show("soup");
        shell.open();
        DISPLAY.settle();
    }

    private void show(String about) {
        lines.show(about, rows.size(), row -> line(rows.get(row)));
    }

    private static EntryLines.Line line(String text) {
        Optional<EntryLines.Trouble> trouble = text.contains("leak")
                ? Optional.of(new EntryLines.Trouble("What is leak?", List.of("1 kg leeks"), "Add leak", 5, 9))
                : Optional.empty();
        return new EntryLines.Line(text, "AP", List.of("1.00"), trouble);
    }

    private final class Kept implements EntryLines.Acts {
        @Override
        public List<String> complete(String typed) {
            return List.of();
        }

        @Override
        public boolean save(String about, int row, String text) {
            done.add(about + " " + row + " " + text);
            if (text.isEmpty()) {
                rows.remove(row);
            } else if (row < rows.size()) {
                rows.set(row, text);
            } else {
                rows.add(text);
            }
            show(about);
            return !text.contains("leak");
        }

        @Override
        public void paste(int row, String text) {
            done.add("paste " + row + " " + text.replace("\n", "/"));
        }

        @Override
        public void open(int row) {
            rows.add(row, "");
            show("soup");
        }

        @Override
        public boolean move(int row, int by) {
            done.add("move " + row + " " + by);
            return true;
        }

        @Override
        public void mark(int row) {
            done.add("mark " + row);
        }

        @Override
        public void add(int row) {
            done.add("add " + row);
        }

        @Override
        public void entered(int row) {
            done.add("entered " + row);
        }
    }

    private Text field(int place) {
        return DISPLAY.find(shell, "lines:" + place, Text.class);
    }

    private void enter(int place, String text) {
        field(place).setFocus();
        field(place).setText(text);
        field(place).notifyListeners(SWT.DefaultSelection, new Event());
        DISPLAY.settle();
    }

    @Test
    void savesALineOnEnterAndGoesOnBelow() {
        enter(3, "4 g salt");

        assertThat(rows).endsWith("4 g salt");
        assertThat(field(4).getText()).isEmpty();
        assertThat(done).contains("soup 3 4 g salt", "entered 4");
    }

    @Test
    void staysInALineThatIsNotUnderstoodWithTheUnknownPartSelected() {
        enter(3, "1 kg leak");

        assertThat(field(3).getSelectionText()).isEqualTo("leak");
        Link trouble = DISPLAY.find(shell, "lines:3:trouble", Link.class);
        assertThat(trouble.getVisible()).isTrue();
        assertThat(trouble.getText()).contains("What is leak?", "1 kg leeks", "Alt+1", "Add leak", "Ctrl+Enter");
    }

    @Test
    void takesAnOfferedLineOrAddsByOneKey() {
        enter(3, "1 kg leak");
        DISPLAY.key(field(3), SWT.CR, SWT.CR, SWT.MOD1);
        DISPLAY.key(field(3), '1', '1', SWT.ALT);

        assertThat(done).contains("add 3", "soup 3 1 kg leeks");
        assertThat(rows).endsWith("1 kg leeks");
    }

    @Test
    void movesMarksOpensAndWalksByKeys() {
        DISPLAY.key(field(1), SWT.ARROW_UP, '\0', SWT.ALT);
        DISPLAY.key(field(1), SWT.F7, '\0', 0);
        DISPLAY.key(field(1), SWT.ARROW_DOWN, '\0', 0);
        DISPLAY.key(field(0), SWT.CR, SWT.CR, SWT.SHIFT);

        assertThat(done).contains("move 1 -1", "mark 1", "entered 2");
        assertThat(rows).containsExactly("1 kg leeks", "", "2 l stock", "3 ea eggs");
    }

    @Test
    void handsOverSeveralLinesPastedAtOnce() {
        field(3).insert("1 kg flour\n2 ea eggs");
        DISPLAY.settle();

        assertThat(done).contains("paste 3 1 kg flour/2 ea eggs");
        assertThat(field(3).getText()).isEmpty();
    }

    @Test
    void keepsWhatIsTypedWhenTheSameThingIsShownAgainAndSavesItBeforeAnother() {
        field(0).setFocus();
        field(0).setText("7 kg leeks");
        show("soup");
        assertThat(field(0).getText()).isEqualTo("7 kg leeks");

        show("bread");

        assertThat(done).contains("soup 0 7 kg leeks");
    }

    @Test
    void removesALineByItsButton() {
        DISPLAY.select(DISPLAY.find(shell, "lines:1:remove", Button.class));

        assertThat(rows).containsExactly("1 kg leeks", "3 ea eggs");
    }

    @Test
    void hasFieldsOnlyForTheLinesInView() {
        rows.clear();
        for (int at = 0; at < 10_000; at++) {
            rows.add(at + " g flour");
        }
        show("bread");
        assertThat(DISPLAY.has(shell, "lines:" + (EntryLines.VIEW - 1))).isTrue();
        assertThat(DISPLAY.has(shell, "lines:" + EntryLines.VIEW)).isFalse();

        assertThat(lines.focusRow(9_000)).isTrue();

        assertThat(lines.focusedRow()).hasValue(9_000);
        assertThat(field(EntryLines.VIEW - 1).getText()).isEqualTo("9000 g flour");
        assertThat(lines.focusRow(10_001)).isFalse();
    }
}
