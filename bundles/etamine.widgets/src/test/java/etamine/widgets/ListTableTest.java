package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.testing.DisplayRule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class ListTableTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private record Row(String id, String name, int grams) {}

    private final AtomicInteger read = new AtomicInteger();
    private final List<List<Row>> selected = new ArrayList<>();
    private Shell shell;
    private ListTable<Row> table;

    @BeforeEach
    void openTable() {
        shell = DISPLAY.shell(500, 400);
        table = new ListTable<Row>(
                        shell,
                        "table:rows",
                        Row::id,
                        List.of(
                                Column.<Row>words("Name", 3, row -> {
                                    read.incrementAndGet();
                                    return row.name();
                                }),
                                Column.<Row>figures(
                                        "On hand", 1, row -> row.grams() + " g", Comparator.comparing(Row::grams))))
                .findable("Find")
                .whenEmpty("Nothing here yet.", "Add the first", () -> {})
                .onSelect(selected::add);
    }

    @Test
    void readsOnlyTheRowsThatAreSeen() {
        table.setRows(IntStream.range(0, 5000).mapToObj(at -> row(at, at)).toList());
        shell.open();
        DISPLAY.until("rows are painted", () -> read.get() > 0);
        assertThat(table.control().getItemCount()).isEqualTo(5000);
        assertThat(read.get()).isLessThan(500);
    }

    @Test
    void keepsTheSelectionByKeyWhenRowsChange() {
        table.setRows(List.of(row(1, 10), row(2, 20), row(3, 30)));
        table.select("r2");
        table.setRows(List.of(row(0, 0), row(1, 10), row(2, 25), row(3, 30)));
        assertThat(table.selected()).contains(row(2, 25));
        assertThat(selected).containsExactly(List.of(row(2, 20)), List.of(row(2, 25)));
    }

    @Test
    void saysNothingAboutASelectionThatDidNotChange() {
        table.setRows(List.of(row(1, 10), row(2, 20)));
        table.select("r2");
        table.setRows(List.of(row(2, 20)));
        assertThat(selected).hasSize(1);
    }

    @Test
    void tellsWhenTheSelectedRowIsGone() {
        table.setRows(List.of(row(1, 10), row(2, 20)));
        table.select("r2");
        table.setRows(List.of(row(1, 10)));
        assertThat(selected).last().isEqualTo(List.of());
    }

    @Test
    void sortsByFiguresNotByTheirText() {
        table.setRows(List.of(row(1, 100), row(2, 20), row(3, 3)));
        DISPLAY.select(table.control().getColumn(1));
        assertThat(table.shown()).extracting(Row::grams).containsExactly(3, 20, 100);
        DISPLAY.select(table.control().getColumn(1));
        assertThat(table.shown()).extracting(Row::grams).containsExactly(100, 20, 3);
    }

    @Test
    void leavesTheRowsThatHoldEveryWordTyped() {
        table.setRows(
                List.of(new Row("a", "Celeriac puree", 1), new Row("b", "Celeriac", 2), new Row("c", "Pea puree", 3)));
        DISPLAY.find(shell, "table:rows:find", Text.class).setText("PUREE cel");
        assertThat(table.shown()).extracting(Row::id).containsExactly("a");
    }

    @Test
    void dropsAFilterThatHidesWhatIsToBeShown() {
        table.setRows(List.of(row(1, 10), row(2, 20)));
        Text find = DISPLAY.find(shell, "table:rows:find", Text.class);
        find.setText("Row 1");
        table.select("r2");
        assertThat(find.getText()).isEmpty();
        assertThat(table.selected()).contains(row(2, 20));
    }

    @Test
    void opensWithEnterAndRemovesWithDelete() {
        List<String> happened = new ArrayList<>();
        table.onOpen(row -> happened.add("open " + row.id()));
        table.onDelete(rows -> rows.forEach(row -> happened.add("delete " + row.id())));
        table.setRows(List.of(row(1, 10), row(2, 20)));
        DISPLAY.key(table.control(), SWT.DEL, SWT.DEL, 0);
        table.select("r2");
        table.control().notifyListeners(SWT.DefaultSelection, new org.eclipse.swt.widgets.Event());
        DISPLAY.key(table.control(), SWT.DEL, SWT.DEL, 0);
        assertThat(happened).containsExactly("open r2", "delete r2");
    }

    @Test
    void copiesTheSelectedRowsAsText() {
        table.setRows(List.of(row(1, 10), row(2, 20)));
        table.select("r2");
        DISPLAY.key(table.control(), 'c', 'c', SWT.MOD1);
        Clipboard clipboard = new Clipboard(DISPLAY.display());
        Object text = clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        assertThat(text).isEqualTo("Name\tOn hand\nRow 2\t20 g");
    }

    @Test
    void startsFindingWithTheFirstLetterTyped() {
        table.setRows(List.of(row(1, 10), row(2, 20)));
        shell.open();
        DISPLAY.key(table.control(), 'r', 'r', 0);
        assertThat(DISPLAY.find(shell, "table:rows:find", Text.class).getText()).isEqualTo("r");
    }

    @Test
    void offersAFirstStepWhenThereIsNothing() {
        shell.open();
        table.setRows(List.of());
        DISPLAY.settle();
        assertThat(table.control().isVisible()).isFalse();
        assertThat(DISPLAY.find(shell, "table:rows:first", Button.class).isVisible())
                .isTrue();
        table.setRows(List.of(row(1, 10)));
        assertThat(table.control().isVisible()).isTrue();
    }

    @Test
    void saysThatNothingHasTheWordsTypedAndOffersToClearThem() {
        shell.open();
        table.setRows(List.of(row(1, 10)));
        Text find = DISPLAY.find(shell, "table:rows:find", Text.class);
        find.setText("samphire");
        DISPLAY.settle();
        Button clear = DISPLAY.find(shell, "table:rows:clear", Button.class);
        assertThat(table.control().isVisible()).isFalse();
        assertThat(clear.isVisible()).isTrue();
        DISPLAY.select(clear);
        assertThat(find.getText()).isEmpty();
        assertThat(table.control().isVisible()).isTrue();
    }

    @Test
    void offersOnlyTheStepsThatHelpNow() {
        shell.open();
        table.whenEmpty("Nothing fits.", "Show all", () -> {}).offerOnly("Show all");
        table.setRows(List.of());
        DISPLAY.settle();
        assertThat(DISPLAY.find(shell, "table:rows:first", Button.class).isVisible())
                .isFalse();
        assertThat(DISPLAY.find(shell, "table:rows:2", Button.class).isVisible())
                .isTrue();
    }

    private static Row row(int number, int grams) {
        return new Row("r" + number, "Row " + number, grams);
    }
}
