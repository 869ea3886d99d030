package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.testing.DisplayRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class FormTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    @Test
    void setsTwoFieldsBesideEachOtherWhenThereIsRoom() {
        List<Control> fields = fields(800);
        assertThat(top(fields.get(0))).isEqualTo(top(fields.get(1)));
        assertThat(top(fields.get(2))).isGreaterThan(top(fields.get(0)));
    }

    @Test
    void setsFieldsBelowEachOtherWhenItIsNarrow() {
        List<Control> fields = fields(320);
        assertThat(top(fields.get(1))).isGreaterThan(top(fields.get(0)));
        assertThat(fields.get(0).getSize().x).isBetween(200, 320);
    }

    @Test
    void putsTheKeyboardInTheFirstFieldThatIsWrong() {
        Shell shell = DISPLAY.shell(600, 400);
        FormPane form = new FormPane(shell);
        form.quantity("Par", "field:par").setText("3 kg");
        QuantityField wrong = form.quantity("Order at", "field:at");
        wrong.setText("some");
        shell.open();
        assertThat(form.check()).isFalse();
        DISPLAY.until("the field has the keyboard", () -> wrong.control().isFocusControl());
    }

    @Test
    void selectsWhatStandsInALineThatTabLeadsInto() {
        Shell shell = DISPLAY.shell(600, 400);
        FormPane form = new FormPane(shell);
        Text name = form.text("Name", "field:name");
        Text unit = form.text("Counted in", "field:unit");
        unit.setText("kg");
        shell.open();
        DISPLAY.until("the first field has the keyboard", () -> name.setFocus() && name.isFocusControl());
        name.traverse(SWT.TRAVERSE_TAB_NEXT);
        DISPLAY.until("the next one has it", unit::isFocusControl);
        DISPLAY.settle();
        assertThat(unit.getSelectionText()).isEqualTo("kg");
    }

    @Test
    void picksByLetterFromAClosedListAndGoesRound() {
        Shell shell = DISPLAY.shell(600, 400);
        Combo kind = new FormPane(shell).pick("Kind", "field:kind", false);
        kind.setItems("Component", "Plate", "Breakdown", "Drink", "Dressing");
        kind.select(0);
        List<String> picked = new ArrayList<>();
        kind.addListener(SWT.Selection, event -> picked.add(kind.getText()));
        for (char letter : "ddxd".toCharArray()) {
            DISPLAY.key(kind, letter, letter, 0);
        }
        assertThat(picked).containsExactly("Drink", "Dressing", "Drink");
    }

    @Test
    void writesAProblemBelowAFieldAndTakesItAway() {
        Shell shell = DISPLAY.shell(600, 400);
        FormPane form = new FormPane(shell);
        Text name = form.text("Name", "field:name");
        form.problem(name, "There is one of that name.");
        Label line = (Label) name.getParent().getChildren()[2];
        assertThat(line.getText()).isEqualTo("There is one of that name.");
        form.problem(name, "");
        assertThat(line.getVisible()).isFalse();
    }

    @Test
    void keepsADialogOpenUntilItsCheckIsContent() {
        Shell shell = DISPLAY.shell(300, 200);
        List<String> happened = new ArrayList<>();
        List<Text> field = new ArrayList<>();
        FormDialog dialog = new FormDialog(shell, "Name", form -> field.add(form.text("Name", "field:name")))
                .button("Save")
                .check(() -> field.get(0).getText().isEmpty() ? Optional.of("Write a name.") : Optional.empty())
                .onAccept(() -> happened.add("saved " + field.get(0).getText()));
        dialog.setBlockOnOpen(false);
        dialog.open();
        Shell opened = dialog.getShell();
        Button ok = DISPLAY.find(opened, "dialog:ok", Button.class);
        assertThat(ok.getText()).isEqualTo("Save");
        DISPLAY.select(ok);
        assertThat(DISPLAY.find(opened, "dialog:problem", Label.class).getText())
                .isEqualTo("Write a name.");
        assertThat(happened).isEmpty();
        field.get(0).setText("Cream");
        DISPLAY.select(ok);
        assertThat(happened).containsExactly("saved Cream");
        assertThat(opened.isDisposed()).isTrue();
        assertThat(dialog.getReturnCode()).isEqualTo(FormDialog.OK);
    }

    private static List<Control> fields(int width) {
        Shell shell = DISPLAY.shell(width, 500);
        FormPane form = new FormPane(shell);
        List<Control> fields = new ArrayList<>();
        for (String name : List.of("One", "Two", "Three")) {
            fields.add(form.text(name, "field:" + name));
        }
        shell.open();
        DISPLAY.until("the form is laid out", () -> fields.get(0).getSize().x > 0);
        return fields;
    }

    private static int top(Control field) {
        return field.getParent().getBounds().y;
    }
}
