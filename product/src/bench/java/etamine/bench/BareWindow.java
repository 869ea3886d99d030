package etamine.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** The floor of a start: a window of the toolkit with one word in it, gone after its first paint. */
public final class BareWindow {

    private BareWindow() {}

    /** Notes the moment of the first paint, in milliseconds since 1970, in the file of the first argument. */
    public static void main(String[] arguments) throws Exception {
        Display display = new Display();
        Shell shell = new Shell(display);
        shell.setLayout(new FillLayout());
        new Label(shell, SWT.NONE).setText("Etamine");
        boolean[] painted = new boolean[1];
        shell.addListener(SWT.Paint, event -> painted[0] = true);
        shell.setSize(1200, 800);
        shell.open();
        while (!painted[0]) {
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
        Files.writeString(Path.of(arguments[0]), Long.toString(System.currentTimeMillis()));
        display.dispose();
    }
}
