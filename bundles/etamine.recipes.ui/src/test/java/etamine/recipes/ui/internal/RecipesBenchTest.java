package etamine.recipes.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Subject;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.testing.DisplayRule;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class RecipesBenchTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private final Stove stove = new Stove();
    private Shell shell;
    private SetFrame frame;
    private RecipesBench bench;

    @BeforeEach
    void open() {
        shell = DISPLAY.shell(1000, 900);
        frame = new SetFrame(shell);
        bench = new RecipesBench(shell, frame, stove.ware);
        shell.open();
        DISPLAY.settle();
    }

    private Recipe puree() {
        return stove.recipes.find("celeriac-puree").orElseThrow();
    }

    private void write(String name, Kind kind) {
        stove.model.add(name, kind);
        bench.refresh();
        bench.show(new Subject("recipe", name.toLowerCase().replace(' ', '-').replace("é", "e")));
        DISPLAY.settle();
    }

    private Text line(int place) {
        return DISPLAY.find(shell, "lines:uses:" + place, Text.class);
    }

    private void enter(int place, String text) {
        line(place).setFocus();
        line(place).setText(text);
        line(place).notifyListeners(SWT.DefaultSelection, new Event());
        DISPLAY.settle();
    }

    private void page(String id) {
        DISPLAY.select(DISPLAY.find(shell, "page:" + id, Button.class));
    }

    private Table table(String id) {
        return DISPLAY.find(shell, id, Table.class);
    }

    private void type(String id, String text) {
        Text field = DISPLAY.find(shell, id, Text.class);
        field.setFocus();
        field.setText(text);
        DISPLAY.settle();
    }

    @Test
    void offersTheFirstStepInAnEmptyBook() {
        assertThat(DISPLAY.find(shell, "table:recipes:first", Button.class).getText())
                .isEqualTo("Write the first recipe");
        assertThat(bench.actions())
                .filteredOn(action -> action.id().equals("copy"))
                .singleElement()
                .satisfies(copy -> assertThat(copy.enabled().getAsBoolean()).isFalse());
    }

    @Test
    void hasTheKeyboardOnTheFirstStepInAnEmptyBook() {
        bench.focus();
        DISPLAY.settle();
        assertThat(DISPLAY.find(shell, "table:recipes:first", Button.class).isFocusControl())
                .isTrue();
    }

    @Test
    void offersToClearWordsThatNothingFitsAndNoFirstStep() {
        write("Celeriac purée", Kind.COMPONENT);

        type("table:recipes:find", "samphire");

        Button clear = DISPLAY.find(shell, "table:recipes:2", Button.class);
        assertThat(clear.getText()).isEqualTo("Clear words and filter");
        assertThat(clear.isVisible()).isTrue();
        assertThat(DISPLAY.find(shell, "table:recipes:first", Button.class).isVisible())
                .isFalse();
        DISPLAY.select(clear);
        assertThat(table("table:recipes").getItemCount()).isEqualTo(1);
        assertThat(DISPLAY.find(shell, "table:recipes:find", Text.class).getText())
                .isEmpty();
    }

    @Test
    void putsTheKeyboardIntoTheFirstLineFromAnotherPage() {
        write("Celeriac purée", Kind.COMPONENT);
        page("allergens");
        table("table:recipes").notifyListeners(SWT.DefaultSelection, new Event());
        DISPLAY.until("the first line has the keyboard", () -> line(0).isFocusControl());
    }

    @Test
    void savesLinesAsTheyAreTyped() {
        write("Celeriac purée", Kind.COMPONENT);

        enter(0, "2 cup celeriac, peeled, large dice");
        enter(1, "120 g cream");

        assertThat(puree().uses()).extracting(use -> use.item()).containsExactly("celeriac", "cream");
        assertThat(line(0).getText()).isEqualTo("2 cup Celeriac, peeled, large dice");
        assertThat(line(2).isFocusControl()).isTrue();
    }

    @Test
    void marksAnUnknownItemAndTakesAnOfferByOneKey() {
        write("Celeriac purée", Kind.COMPONENT);

        enter(0, "120 g celeriak");

        Link trouble = DISPLAY.find(shell, "lines:uses:0:trouble", Link.class);
        assertThat(trouble.getVisible()).isTrue();
        assertThat(trouble.getText()).contains("Celeriac", "Alt+1", "Ctrl+Enter");
        DISPLAY.key(line(0), '1', '1', SWT.ALT);
        assertThat(puree().uses()).extracting(use -> use.item()).containsExactly("celeriac");
    }

    @Test
    void turnsAPastedListIntoLinesAndSaysWhatBecameOfIt() {
        write("Celeriac purée", Kind.COMPONENT);

        line(0).insert("For the purée:\n- 2 ea celeriac\n- 120 g cream\n- 1 kg samphire");
        DISPLAY.settle();

        assertThat(puree().uses()).hasSize(2);
        assertThat(line(2).getText()).isEqualTo("1 kg samphire");
        assertThat(DISPLAY.find(shell, "lines:uses:2:trouble", Link.class).getVisible())
                .isTrue();
    }

    @Test
    void switchesBetweenPurchasedAndEdibleByOneKey() {
        write("Celeriac purée", Kind.COMPONENT);
        enter(0, "156 g celeriac, peeled, large dice");
        assertThat(DISPLAY.find(shell, "lines:uses:0:mark", Button.class).getText())
                .isEqualTo("EP");

        DISPLAY.key(line(0), SWT.F7, '\0', 0);

        assertThat(DISPLAY.find(shell, "lines:uses:0:mark", Button.class).getText())
                .isEqualTo("AP");
    }

    @Test
    void linksAProblemToItsRow() {
        write("Celeriac purée", Kind.COMPONENT);
        enter(0, "1 l cream");
        line(1).setFocus();

        Link problems = DISPLAY.find(shell, "problems", Link.class);
        assertThat(problems.getText()).contains("Line 1");
        Event click = new Event();
        click.text = "0";
        problems.notifyListeners(SWT.Selection, click);
        DISPLAY.settle();

        assertThat(line(0).isFocusControl()).isTrue();
    }

    @Test
    void narrowsTheListByWordsAndByKind() {
        write("Celeriac purée", Kind.COMPONENT);
        write("Celeriac plate", Kind.PLATE);
        write("Bouillon", Kind.COMPONENT);

        type("table:recipes:find", "celeriac");
        assertThat(table("table:recipes").getItemCount()).isEqualTo(2);

        Combo kind = DISPLAY.find(shell, "filter:kind", Combo.class);
        kind.select(kind.indexOf("Plate"));
        kind.notifyListeners(SWT.Selection, new Event());
        assertThat(table("table:recipes").getItemCount()).isEqualTo(1);

        bench.show(new Subject("recipe", "bouillon"));
        assertThat(table("table:recipes").getItemCount())
                .as("what hid it is cleared")
                .isEqualTo(3);
    }

    @Test
    void scalesBesideTheExactAmounts() {
        write("Celeriac purée", Kind.COMPONENT);
        enter(0, "103 g cream");
        page("scale");
        Combo wish = DISPLAY.find(shell, "field:scale-by", Combo.class);
        wish.select(1);
        wish.notifyListeners(SWT.Selection, new Event());

        type("field:scale-to", "2.5 kg");

        assertThat(table("table:scaled").getItem(0).getText(1)).isEqualTo("257.5 g");
        assertThat(table("table:scaled").getItem(0).getText(2)).isEqualTo("260 g");
        assertThat(DISPLAY.find(shell, "scale:outcome", Label.class).getText()).startsWith("Times 2.5");
    }

    @Test
    void countsATryOnTheTestsPage() {
        write("Celeriac purée", Kind.COMPONENT);
        page("tests");

        DISPLAY.select(DISPLAY.find(shell, "tests:tried", Button.class));

        assertThat(puree().tested()).isEqualTo(1);
        assertThat(DISPLAY.find(shell, "tests:standing", Label.class).getText()).startsWith("Tested, 1 good try");
    }

    @Test
    void showsWhatWasAndBringsItBack() {
        write("Celeriac purée", Kind.COMPONENT);
        enter(0, "103 g cream");
        page("history");
        assertThat(table("table:revisions").getItemCount()).isEqualTo(2);

        table("table:revisions").setSelection(1);
        table("table:revisions").notifyListeners(SWT.Selection, new Event());
        DISPLAY.settle();
        assertThat(table("table:differences").getItem(0).getText(0)).isEqualTo("added");
        DISPLAY.select(DISPLAY.find(shell, "history:restore", Button.class));

        assertThat(puree().uses()).isEmpty();
    }

    @Test
    void archivesAndRemovesByActions() {
        write("Celeriac purée", Kind.COMPONENT);
        bench.actions().stream()
                .filter(action -> action.id().equals("archive"))
                .forEach(action -> action.run().run());
        assertThat(puree().standing().archived()).isTrue();
        assertThat(table("table:recipes").getItemCount()).isZero();

        bench.show(new Subject("recipe", "celeriac-puree"));
        bench.actions().stream()
                .filter(action -> action.id().equals("remove"))
                .forEach(action -> action.run().run());

        assertThat(stove.recipes.all()).isEmpty();
        assertThat(frame.told).anyMatch(text -> text.contains("undo brings it back"));
    }

    @Test
    void keepsTheFieldsOfAMenuPriceUntilThereIsOne() {
        write("Celeriac purée", Kind.COMPONENT);
        Text tax = DISPLAY.find(shell, "field:tax", Text.class);
        tax.setFocus();
        tax.setText("13.5");
        line(0).setFocus();
        DISPLAY.settle();

        assertThat(puree().menu()).isEmpty();
        assertThat(tax.getText()).isEqualTo("13.5");
    }

    @Test
    void namesEveryPage() {
        assertThat(List.of("write", "scale", "tests", "history")).allMatch(id -> DISPLAY.has(shell, "page:" + id));
    }
}
