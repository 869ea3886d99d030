package etamine.shell.app.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.storage.Document;
import etamine.testing.DisplayRule;
import etamine.testing.VolatileBook;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

class WindowTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private final Gathering gathering = Fakes.kitchen();
    private final VolatileBook book = new VolatileBook();

    @Test
    void listsTheStationsInTheOrderTheWorkHappens() {
        Shell shell = open();
        assertThat(Arrays.stream(rail(shell).getItems()).map(TableItem::getText).map(String::strip))
                .startsWith("The pass  (4)", "Ingredients", "Recipes")
                .endsWith("Covers", "Orders");
    }

    @Test
    void showsTheCallsOfAllModulesAndTheOneAboutTheModuleThatFailed() {
        Shell shell = open();
        Table calls = DISPLAY.find(shell, "table:calls", Table.class);
        assertThat(calls.getItemCount()).isEqualTo(5);
        assertThat(calls.getItem(0).getText(1)).startsWith("Dairy order closes");
        assertThat(calls.getItem(3).getText(1)).contains("the list of lots is damaged");
    }

    @Test
    void goesFromACallToWhereItIsDealtWithInOneStep() {
        Shell shell = open();
        Table calls = DISPLAY.find(shell, "table:calls", Table.class);
        calls.setSelection(0);
        calls.notifyListeners(SWT.DefaultSelection, new Event());
        DISPLAY.settle();
        assertThat(DISPLAY.find(shell, "bench:title", Label.class).getText()).isEqualTo("Orders");
        assertThat(DISPLAY.find(shell, "table:orders", Table.class).getSelectionIndices())
                .containsExactly(4);
    }

    @Test
    void explainsWhatIsSelectedOnTheSlate() {
        Window window = openWindow();
        window.go(new Subject("stock-row", "r1"));
        DISPLAY.settle();
        assertThat(DISPLAY.find(window.shell(), "slate:title", Label.class).getText())
                .isEqualTo("Cream on hand");
        assertThat(DISPLAY.find(window.shell(), "slate:value", Label.class).getText())
                .isEqualTo("37\u00a0g");
        assertThat(DISPLAY.find(window.shell(), "slate:parts", StyledText.class).getText())
                .startsWith(
                        "Counted on 22 November   1 200\u00a0g\nWalk-in, shelf 2   800\u00a0g\ncount sheet of 22 November");
        window.openStation("recipes");
        assertThat(DISPLAY.find(window.shell(), "slate:title", Label.class).getText())
                .isNotEqualTo("Cream on hand");
        window.openStation("stock");
        assertThat(DISPLAY.find(window.shell(), "slate:title", Label.class).getText())
                .isEqualTo("Cream on hand");
    }

    @Test
    void opensFromTheSlateWhatAFigureWasMadeOf() {
        Window window = openWindow();
        window.explain(Optional.of(Explanation.of(
                "Plate",
                "5.00 EUR",
                List.of(
                        Explanation.leaf("Salt", "0.01 EUR", ""),
                        Explanation.leaf("Jus", "1.40 EUR", "").about(new Subject("recipes-row", "r3"))))));
        StyledText parts = DISPLAY.find(window.shell(), "slate:parts", StyledText.class);
        parts.setCaretOffset(parts.getCharCount());
        DISPLAY.key(parts, SWT.CR, SWT.CR, 0);
        assertThat(DISPLAY.find(window.shell(), "bench:title", Label.class).getText())
                .isEqualTo("Recipes");
        assertThat(DISPLAY.find(window.shell(), "table:recipes", Table.class).getSelectionIndices())
                .containsExactly(3);
    }

    @Test
    void putsANoteInPlaceOfAStationThatCannotOpenAndGoesOn() {
        Window window = openWindow();
        window.openStation("broken");
        DISPLAY.settle();
        assertThat(DISPLAY.find(window.shell(), "note:text", Label.class).getText())
                .contains("A part is missing.");
        window.openStation("stock");
        DISPLAY.settle();
        assertThat(DISPLAY.find(window.shell(), "table:stock", Table.class).isVisible())
                .isTrue();
    }

    @Test
    void putsANoteInPlaceOfAStationThatIsGoneAndTakesItBack() {
        Fakes.ListStation extra = new Fakes.ListStation("prep", "Prep", 90);
        gathering.stations().add(extra);
        Window window = openWindow();
        window.openStation("prep");
        gathering.stations().remove(extra);
        DISPLAY.until("the note is there", () -> DISPLAY.has(window.shell(), "note"));
        assertThat(DISPLAY.has(window.shell(), "table:prep")).isFalse();
        gathering.stations().add(extra);
        DISPLAY.until("the bench is back", () -> DISPLAY.has(window.shell(), "table:prep"));
        assertThat(DISPLAY.has(window.shell(), "note")).isFalse();
    }

    @Test
    void tellsTheBenchTheDayThatIsPickedOnTheRibbon() {
        Fakes.ListStation extra = new Fakes.ListStation("prep", "Prep", 90);
        gathering.stations().add(extra);
        Window window = openWindow();
        window.openStation("prep");
        var day = window.days().today().plusDays(3);
        DISPLAY.find(window.shell(), "day:" + day).notifyListeners(SWT.MouseDown, new Event());
        DISPLAY.settle();
        assertThat(extra.happened).last().isEqualTo("refresh " + day);
        DISPLAY.key(DISPLAY.find(window.shell(), "day:" + day), SWT.ARROW_RIGHT, '\0', 0);
        assertThat(extra.happened).last().isEqualTo("refresh " + day.plusDays(1));
    }

    @Test
    void saysInASentenceWhyAJobFailed() {
        Window window = openWindow();
        window.openStation("stock");
        DISPLAY.select(DISPLAY.find(window.shell(), "action:fail"));
        Label status = DISPLAY.find(window.shell(), "status", Label.class);
        DISPLAY.until("the failure is told", () -> !status.getText().isEmpty());
        assertThat(status.getText()).isEqualTo("Printing: There is no printer.");
        assertThat(DISPLAY.display().getShells()).hasSize(1);
    }

    @Test
    void offersOnlyWhatIsPossible() {
        Window window = openWindow();
        window.openStation("stock");
        ToolItem remove = DISPLAY.find(window.shell(), "action:remove", ToolItem.class);
        Table table = DISPLAY.find(window.shell(), "table:stock", Table.class);
        table.deselectAll();
        table.notifyListeners(SWT.Selection, new Event());
        window.benches().actionsChanged();
        assertThat(remove.isEnabled()).isFalse();
        table.setSelection(2);
        table.notifyListeners(SWT.Selection, new Event());
        window.benches().actionsChanged();
        assertThat(remove.isEnabled()).isTrue();
        assertThat(DISPLAY.find(window.shell(), "menu:remove", MenuItem.class).getAccelerator())
                .isZero();
        assertThat(DISPLAY.find(window.shell(), "menu:add", MenuItem.class).getAccelerator())
                .isEqualTo(SWT.MOD1 | 'N');
    }

    @Test
    void refreshesTheBenchAndNamesWhatCanBeUndoneAfterACommit() {
        Fakes.ListStation extra = new Fakes.ListStation("prep", "Prep", 90);
        gathering.stations().add(extra);
        Window window = openWindow();
        window.openStation("prep");
        extra.happened.clear();
        book.write("Change par of Cream", work -> work.save("pars", "cream", Document.ANY, "{}"));
        MenuItem undo = DISPLAY.find(window.shell(), "edit:undo", MenuItem.class);
        DISPLAY.until("undo is offered", () -> undo.isEnabled());
        assertThat(undo.getText()).startsWith("&Undo Change par of Cream");
        DISPLAY.until("the bench read again", () -> !extra.happened.isEmpty());
        DISPLAY.select(undo);
        DISPLAY.until("it is taken back", () -> book.shelf("pars").get("cream").isEmpty());
    }

    @Test
    void findsThingsInAllModulesWhileTyping() {
        Window window = openWindow();
        window.find();
        Shell find = Arrays.stream(DISPLAY.display().getShells())
                .filter(shell -> "find".equals(shell.getData("id")))
                .findFirst()
                .orElseThrow();
        DISPLAY.find(find, "find:text", Text.class).setText("celeriac");
        Table found = DISPLAY.find(find, "find:table", Table.class);
        DISPLAY.until("both are found", () -> found.getItemCount() == 2);
        DISPLAY.find(find, "find:text").notifyListeners(SWT.DefaultSelection, new Event());
        DISPLAY.settle();
        assertThat(find.isDisposed()).isTrue();
        assertThat(DISPLAY.find(window.shell(), "table:stock", Table.class).getSelectionIndices())
                .containsExactly(2);
    }

    @Test
    void opensWithoutABookAndOffersToOpenOne() {
        Window window = new Window(DISPLAY.display(), gathering, settings(Map.of()));
        window.open();
        DISPLAY.until("the page is there", () -> DISPLAY.has(window.shell(), "book:open"));
        gathering.books().add(book);
        DISPLAY.until("the pass is there", () -> DISPLAY.has(window.shell(), "table:calls"));
        gathering.books().remove(book);
        DISPLAY.until("the page is back", () -> DISPLAY.has(window.shell(), "book:open"));
    }

    @Test
    void writesWhenItWasFirstPaintedAndCloses(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("painted");
        long before = System.currentTimeMillis();
        Window window =
                new Window(DISPLAY.display(), gathering, settings(Map.of("etamine.paint.file", file.toString())));
        window.open();
        window.runUntilClosed();
        assertThat(Long.parseLong(Files.readString(file))).isBetween(before, System.currentTimeMillis());
    }

    @Test
    void takesItsSizeFromTheSettings() {
        Window window = new Window(DISPLAY.display(), gathering, settings(Map.of("etamine.window", "900x600")));
        window.open();
        assertThat(window.shell().getSize().x).isEqualTo(900);
        assertThat(settings(Map.of("etamine.window", "large")).size()).isEmpty();
    }

    @Test
    void closesAndOpensTheSlate() {
        Window window = openWindow();
        StyledText parts = DISPLAY.find(window.shell(), "slate:parts", StyledText.class);
        window.toggleSlate();
        assertThat(parts.getParent().isVisible()).isFalse();
        window.toggleSlate();
        assertThat(parts.getParent().isVisible()).isTrue();
    }

    private static WindowSettings settings(Map<String, String> properties) {
        return WindowSettings.from(properties::get);
    }

    private Shell open() {
        return openWindow().shell();
    }

    private Window openWindow() {
        gathering.books().add(book);
        Window window = new Window(DISPLAY.display(), gathering, settings(Map.of()));
        window.open();
        DISPLAY.until(
                "the calls are there",
                () -> DISPLAY.has(window.shell(), "table:calls")
                        && DISPLAY.find(window.shell(), "table:calls", Table.class)
                                        .getItemCount()
                                == 5);
        return window;
    }

    private static Table rail(Shell shell) {
        return DISPLAY.find(shell, "stations", Table.class);
    }
}
