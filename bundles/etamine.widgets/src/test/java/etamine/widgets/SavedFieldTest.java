package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.testing.DisplayRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class SavedFieldTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private final List<String> saved = new ArrayList<>();
    private Text text;
    private SavedField field;

    @BeforeEach
    void open() {
        Shell shell = DISPLAY.shell(500, 300);
        FormPane form = new FormPane(shell);
        text = form.text("Price", "field:price");
        field = new SavedField(form, text, this::save);
        field.show("cream", "4.10");
        shell.open();
        DISPLAY.settle();
    }

    private Optional<String> save(String about, String typed) {
        if (typed.equals("cheap")) {
            return Optional.of("Write an amount.");
        }
        saved.add(about + " " + typed);
        return Optional.empty();
    }

    private void leave() {
        text.notifyListeners(SWT.FocusOut, new Event());
    }

    @Test
    void savesWhenItIsLeftAndOnlyIfItChanged() {
        leave();
        assertThat(saved).isEmpty();

        text.setText("4.20");
        leave();
        leave();
        assertThat(saved).containsExactly("cream 4.20");
    }

    @Test
    void keepsWhatCannotBeSavedWhileAnotherThingIsShown() {
        text.setText("cheap");
        field.show("salt", "1.00");
        assertThat(text.getText()).isEqualTo("1.00");

        field.show("cream", "4.10");

        assertThat(text.getText()).isEqualTo("cheap");
        assertThat(saved).isEmpty();
    }

    @Test
    void savesUnderTheThingItWasTypedFor() {
        text.setText("4.20");

        field.show("salt", "1.00");

        assertThat(saved).containsExactly("cream 4.20");
        assertThat(text.getText()).isEqualTo("1.00");
    }

    @Test
    void keepsWhatIsBeingTypedWhenTheSameThingIsShownAgain() {
        text.setText("4.");

        field.show("cream", "4.10");

        assertThat(text.getText()).isEqualTo("4.");
    }

    @Test
    void showsANewValueWhenNothingIsBeingTyped() {
        field.show("cream", "4.50");

        assertThat(text.getText()).isEqualTo("4.50");
        leave();
        assertThat(saved).isEmpty();
    }

    @Test
    void putsBackWhatWasThereOnEscape() {
        text.setText("9");

        DISPLAY.key(text, SWT.ESC, SWT.ESC, 0);

        assertThat(text.getText()).isEqualTo("4.10");
    }
}
