package etamine.shell.app.internal;

import etamine.base.Printout;
import etamine.base.Progress;
import etamine.widgets.FilePick;
import etamine.widgets.Prompt;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.widgets.Shell;

/** What can be done with printouts: saving and printing them, in the background. */
final class PaperDesk {
    private static final List<FilePick.Kind> KINDS =
            List.of(new FilePick.Kind("PDF", "pdf"), new FilePick.Kind("Web page", "html"));
    private final Shell shell;
    private final WorkLine work;
    private final Ui ui;
    private final Press.Shop shop;
    private Function<String, Optional<Path>> place;

    PaperDesk(Shell shell, WorkLine work, Ui ui, Press.Shop shop) {
        this.shell = shell;
        this.work = work;
        this.ui = ui;
        this.shop = shop;
        this.place = name -> FilePick.save(shell, "Save " + name, name, KINDS);
    }

    /** Takes files from elsewhere than from the desktop's dialog. */
    void places(Function<String, Optional<Path>> other) {
        place = other;
    }

    void save(Printout printout) {
        place.apply(printout.title())
                .ifPresent(file -> work.run(
                        "Saving " + printout.title(),
                        progress -> write(printout, file),
                        saved -> work.say(printout.title() + " was saved to " + saved + "."),
                        () -> !shell.isDisposed()));
    }

    private static Path write(Printout printout, Path file) throws IOException {
        if (FilePick.hasEnding(file.toString(), KINDS.get(1))) {
            printout.html(file);
        } else {
            printout.pdf(file);
        }
        return file;
    }

    void print(Printout printout) {
        if (!shop.any()) {
            String sentence =
                    "There is no printer on this computer. Set one up in the settings of the desktop, or save "
                            + printout.title() + " as a PDF file and print it elsewhere.";
            if (Prompt.confirm(shell, "No printer", sentence, "Save as PDF\u2026")) {
                save(printout);
            }
            return;
        }
        shop.pick(shell)
                .ifPresent(press -> work.run(
                        "Printing " + printout.title(),
                        progress -> print(printout, press, progress),
                        pages -> work.say(said(printout, pages)),
                        () -> !shell.isDisposed()));
    }

    private int print(Printout printout, Press press, Progress progress) throws Exception {
        PageFeed feed = new PageFeed(printout.title(), press, ui, progress);
        return feed.run(printout);
    }

    private static String said(Printout printout, int pages) {
        return printout.title() + " was sent to the printer: " + pages + (pages == 1 ? " page." : " pages.");
    }
}
