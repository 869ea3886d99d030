package etamine.shell.app.internal;

import java.util.Optional;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Shell;
import org.jspecify.annotations.Nullable;

/** A printer of the desktop. */
final class DesktopPress implements Press {
    private final PrinterData wishes;
    private final Printer printer;
    private @Nullable GC pen;

    private DesktopPress(PrinterData wishes) {
        this.wishes = wishes;
        this.printer = new Printer(wishes);
    }

    @Override
    public boolean begin(String title) {
        return printer.startJob(title);
    }

    @Override
    public boolean wants(int page) {
        return wishes.scope != PrinterData.PAGE_RANGE || page >= wishes.startPage && page <= wishes.endPage;
    }

    @Override
    public boolean beginPage() {
        boolean begun = printer.startPage();
        if (begun) {
            pen = new GC(printer);
        }
        return begun;
    }

    @Override
    public void strip(ImageData strip, int top, int rows) {
        GC now = pen;
        if (now == null) {
            return;
        }
        Image image = new Image(printer, strip);
        try {
            Rectangle paper = whole();
            Rectangle place = PageFit.strip(paper, strip.width, rows, top, strip.height);
            now.drawImage(image, 0, 0, strip.width, strip.height, place.x, place.y, place.width, place.height);
        } finally {
            image.dispose();
        }
    }

    /** All of the sheet as the printer counts: it puts its nought at the corner of what it can print on. */
    private Rectangle whole() {
        return printer.computeTrim(0, 0, printer.getClientArea().width, printer.getClientArea().height);
    }

    @Override
    public void endPage() {
        GC now = pen;
        if (now != null) {
            now.dispose();
            pen = null;
        }
        printer.endPage();
    }

    @Override
    public void end(boolean printed) {
        GC now = pen;
        if (now != null) {
            now.dispose();
        }
        if (printed) {
            printer.endJob();
        } else {
            printer.cancelJob();
        }
        printer.dispose();
    }

    /** The printers of this desktop. */
    static final class Desktop implements Press.Shop {

        @Override
        public boolean any() {
            return Printer.getPrinterList().length > 0;
        }

        @Override
        public Optional<Press> pick(Shell shell) {
            PrintDialog dialog = new PrintDialog(shell);
            dialog.setText("Print");
            return Optional.ofNullable(dialog.open()).map(DesktopPress::new);
        }
    }
}
