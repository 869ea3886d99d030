package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.testing.DisplayRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class EditGridTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private final List<String> saved = new ArrayList<>();
    private Shell shell;
    private EditGrid grid;

    @BeforeEach
    void open() {
        shell = DISPLAY.shell(500, 300);
        grid = new EditGrid(
                shell,
                "grid",
                List.of(GridColumn.entry("amount", 3), GridColumn.entry("item", 3), GridColumn.figure("cost", 2)),
                this::save);
        grid.show("soup", List.of(List.of("1 kg", "Leeks", "2.00"), List.of("2 l", "Stock", "3.00")));
        shell.open();
        DISPLAY.settle();
    }

    private Optional<String> save(String about, int row, List<String> cells) {
        if (cells.get(0).equals("much")) {
            return Optional.of("Write an amount.");
        }
        saved.add(about + " " + row + " " + cells);
        return Optional.empty();
    }

    private Text cell(int row, int column) {
        return DISPLAY.find(shell, "grid:" + row + ":" + column, Text.class);
    }

    private void enter(int row, int column, String text) {
        cell(row, column).setText(text);
        cell(row, column).notifyListeners(SWT.DefaultSelection, new Event());
        DISPLAY.settle();
    }

    private List<String> sentences() {
        return grid.controls().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .filter(Control::getVisible)
                .map(Label::getText)
                .filter(text -> text.startsWith("Write"))
                .toList();
    }

    @Test
    void savesARowWhenEnterIsPressedAndOnlyIfItChanged() {
        enter(0, 0, "1 kg");
        assertThat(saved).isEmpty();

        enter(0, 0, " 3 kg ");
        assertThat(saved).containsExactly("soup 0 [3 kg, Leeks]");
    }

    @Test
    void addsThroughTheEmptyRowAtTheEnd() {
        enter(2, 1, "Salt");

        assertThat(saved).containsExactly("soup 2 [, Salt]");
    }

    @Test
    void removesARowByItsButton() {
        List<Button> buttons = grid.controls().stream()
                .filter(Button.class::isInstance)
                .map(Button.class::cast)
                .toList();
        assertThat(buttons).hasSize(3);
        assertThat(buttons.get(2).getVisible())
                .as("nothing to remove in the empty row")
                .isFalse();

        DISPLAY.select(buttons.get(1));

        assertThat(saved).containsExactly("soup 1 [, ]");
    }

    @Test
    void marksWhatCannotBeSavedAndKeepsItWhileAnotherThingIsShown() {
        enter(0, 0, "much");
        assertThat(sentences()).containsExactly("Write an amount.");

        grid.show("bread", List.of(List.of("5 kg", "Flour", "")));
        assertThat(sentences()).isEmpty();
        assertThat(cell(0, 0).getText()).isEqualTo("5 kg");

        grid.show("soup", List.of(List.of("1 kg", "Leeks", "2.00"), List.of("2 l", "Stock", "3.00")));
        assertThat(cell(0, 0).getText()).isEqualTo("much");
        assertThat(sentences()).containsExactly("Write an amount.");
        assertThat(saved).isEmpty();
    }

    @Test
    void savesWhatWasTypedBeforeAnotherThingIsShown() {
        cell(1, 0).setText("4 l");

        grid.show("bread", List.of());

        assertThat(saved).containsExactly("soup 1 [4 l, Stock]");
    }

    @Test
    void keepsWhatIsBeingTypedWhenTheSameThingIsShownAgain() {
        cell(0, 0).setText("7");

        grid.show("soup", List.of(List.of("1 kg", "Leeks", "2.50"), List.of("2 l", "Stock", "3.00")));

        assertThat(cell(0, 0).getText()).isEqualTo("7");
    }

    @Test
    void putsBackWhatWasThereOnEscape() {
        cell(0, 0).setText("7");

        DISPLAY.key(cell(0, 0), SWT.ESC, SWT.ESC, 0);

        assertThat(cell(0, 0).getText()).isEqualTo("1 kg");
    }

    @Test
    void staysWithinItsRoom() {
        for (Control control : grid.controls()) {
            assertThat(control.getBounds().x + control.getBounds().width).isLessThanOrEqualTo(grid.getSize().x);
        }
        assertThat(cell(0, 1).getBounds().x).isEqualTo(cell(1, 1).getBounds().x);
        assertThat(cell(1, 0).getBounds().y)
                .isGreaterThanOrEqualTo(cell(0, 0).getBounds().y + cell(0, 0).getBounds().height);
    }

    @Test
    void leadsTabThroughTheCellsOfARowBeforeItsButton() {
        EditGrid steps = new EditGrid(
                shell,
                "steps",
                List.of(
                        GridColumn.entry("what to do", 3),
                        GridColumn.entry("temperature", 3).such("at °C").under()),
                this::save);
        steps.show("soup", List.of(List.of("Simmer.", "")));
        assertThat(steps.getTabList())
                .extracting(Object::getClass)
                .map(Class::getSimpleName)
                .containsExactly("Text", "Text", "Button", "Text", "Text", "Button");
        assertThat(((Text) steps.getTabList()[1]).getMessage()).isEqualTo("at °C");
    }

    private void showMany() {
        List<List<String>> many = new ArrayList<>();
        for (int row = 0; row < 2_000; row++) {
            many.add(List.of(row + " g", "Item " + row, ""));
        }
        grid.show("many", many);
        DISPLAY.settle();
    }

    private long fields() {
        return grid.controls().stream().filter(Text.class::isInstance).count();
    }

    @Test
    void makesFieldsOnlyForTheRowsInView() {
        showMany();

        assertThat(fields()).isEqualTo(EditGrid.VIEW * 2L);
        assertThat(grid.focusRow(1_999)).isTrue();
        assertThat(grid.focusRow(2_001)).isFalse();
        assertThat(fields()).isEqualTo(EditGrid.VIEW * 2L);
        assertThat(cell(EditGrid.VIEW - 1, 1).getText()).isEqualTo("Item 1999");
        assertThat(grid.focusedRow()).hasValue(1_999);

        enter(EditGrid.VIEW - 1, 0, "5 g");
        assertThat(saved).containsExactly("many 1999 [5 g, Item 1999]");
        grid.show("soup", List.of());
        assertThat(fields()).isEqualTo(2);
    }

    @Test
    void keepsWhatCannotBeSavedInItsRowWhileOthersAreInView() {
        showMany();
        enter(3, 0, "much");

        grid.scroll(500);
        assertThat(cell(3, 0).getText()).isEqualTo("503 g");
        assertThat(sentences()).isEmpty();

        grid.scroll(0);
        assertThat(cell(3, 0).getText()).isEqualTo("much");
        assertThat(sentences()).containsExactly("Write an amount.");
    }

    @Test
    void goesOnWithTabPastTheRowsInView() {
        showMany();
        cell(EditGrid.VIEW - 1, 1).setFocus();
        DISPLAY.settle();

        cell(EditGrid.VIEW - 1, 1).traverse(SWT.TRAVERSE_TAB_NEXT);
        DISPLAY.settle();
        assertThat(grid.focusedRow()).hasValue(EditGrid.VIEW);

        grid.focusRow(1);
        cell(0, 0).setFocus();
        assertThat(cell(0, 0).getText()).isEqualTo("1 g");
        cell(0, 0).traverse(SWT.TRAVERSE_TAB_PREVIOUS);
        DISPLAY.settle();
        assertThat(grid.focusedRow()).hasValue(0);
    }
}
