package etamine.shell.app.internal;

import java.util.Optional;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Shell;

/** One printer picked by a person, used on the window's thread. */
interface Press {

    /** Begins; false when the printer does not take the job. */
    boolean begin(String title);

    /** Whether that page was asked for. */
    boolean wants(int page);

    /** Begins a page. */
    boolean beginPage();

    /**
     * Puts a strip of the page where it belongs, fitted to the paper.
     *
     * @param strip part of the page's picture, as wide as all of it
     * @param top how many rows of the picture lie above it
     * @param rows how many rows the whole picture has
     */
    void strip(ImageData strip, int top, int rows);

    /** Ends a page. */
    void endPage();

    /** Ends the job: it is printed, or thrown away. */
    void end(boolean printed);

    /** Where printers are picked. */
    interface Shop {
        /** Whether there is any printer on this computer. */
        boolean any();

        /** Asks for one; empty when the person changed their mind. */
        Optional<Press> pick(Shell shell);
    }
}
