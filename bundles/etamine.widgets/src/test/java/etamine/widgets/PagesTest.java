package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.testing.DisplayRule;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class PagesTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private final List<String> built = new ArrayList<>();
    private final List<String> shown = new ArrayList<>();
    private Pages pages;
    private Text write;

    @BeforeEach
    void open() {
        Shell shell = DISPLAY.shell(500, 300);
        pages = new Pages(shell)
                .onShow(shown::add)
                .page("write", "Write", parent -> write = text("write", parent))
                .page("scale", "Scale", parent -> text("scale", parent))
                .page("yield", "Yield", parent -> text("yield", parent));
        shell.open();
        DISPLAY.settle();
    }

    private Text text(String id, Composite parent) {
        built.add(id);
        return new Text(parent, SWT.BORDER);
    }

    private void turn(Control at, int key) {
        Event event = new Event();
        event.widget = at;
        event.type = SWT.KeyDown;
        event.keyCode = key;
        event.stateMask = SWT.MOD1;
        at.notifyListeners(SWT.KeyDown, event);
    }

    @Test
    void showsTheFirstPageAndBuildsTheOthersWhenTheyAreAskedFor() {
        assertThat(pages.shown()).isEqualTo("write");
        assertThat(built).containsExactly("write");
        pages.show("yield");
        pages.show("write");
        pages.show("yield");
        assertThat(built).containsExactly("write", "yield");
        assertThat(shown).containsExactly("write", "yield", "write", "yield");
        assertThat(write.isVisible()).isFalse();
    }

    @Test
    void staysWhereItIsOnAnUnknownPage() {
        pages.show("nowhere");
        assertThat(pages.shown()).isEqualTo("write");
        assertThat(write.isVisible()).isTrue();
    }

    @Test
    void takesTheKeyboardAlongWhenKeysTurnThePage() {
        DISPLAY.until("the page has the keyboard", () -> write.setFocus() && write.isFocusControl());
        turn(write, SWT.PAGE_DOWN);
        DISPLAY.until(
                "the next page has the keyboard",
                () -> DISPLAY.display().getFocusControl() instanceof Text now && now != write && now.isVisible());
    }

    @Test
    void turnsByKeysFromBesideThePagesAndLeavesTheKeyboardThere() {
        Text beside = new Text(pages.getParent(), SWT.BORDER);
        pages.getParent().layout();
        DISPLAY.until("the field beside has the keyboard", () -> beside.setFocus() && beside.isFocusControl());
        turn(beside, SWT.PAGE_DOWN);
        assertThat(pages.shown()).isEqualTo("scale");
        assertThat(beside.isFocusControl()).isTrue();
    }

    @Test
    void turnsPagesByKeysAndRoundTheEnd() {
        turn(write, SWT.PAGE_DOWN);
        assertThat(pages.shown()).isEqualTo("scale");
        turn(write, SWT.PAGE_UP);
        turn(write, SWT.PAGE_UP);
        assertThat(pages.shown()).isEqualTo("yield");
    }
}
