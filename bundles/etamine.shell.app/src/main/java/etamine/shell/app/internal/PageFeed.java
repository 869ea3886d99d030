package etamine.shell.app.internal;

import etamine.base.Printout;
import etamine.base.Progress;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.function.BooleanSupplier;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;

/**
 * Feeds pages to a printer. Drawing them happens in the background; only putting them on the printer is done on the
 * window's thread, a strip at a time, so that the window answers meanwhile.
 */
final class PageFeed {
    private static final int DOTS_PER_INCH = 300;
    private static final int STRIP = 400;
    private final String title;
    private final Press press;
    private final Ui ui;
    private final Progress progress;

    PageFeed(String title, Press press, Ui ui, Progress progress) {
        this.title = title;
        this.press = press;
        this.ui = ui;
        this.progress = progress;
    }

    /** Prints what was asked for; answers how many pages. */
    int run(Printout printout) throws IOException, InterruptedException {
        boolean printed = false;
        int[] pages = {0};
        try {
            if (!there(() -> press.begin(title))) {
                throw new IOException("The printer does not take it; look whether it is switched on and try again.");
            }
            printout.pages(DOTS_PER_INCH, (page, of, png) -> {
                progress.at("page " + page + " of " + of, (page - 1.0) / of);
                pages[0] += page(page, png) ? 1 : 0;
                return !progress.cancelled();
            });
            printed = !progress.cancelled();
            return printed ? pages[0] : 0;
        } finally {
            boolean all = printed;
            there(() -> {
                press.end(all);
                return true;
            });
        }
    }

    private boolean page(int page, byte[] png) throws IOException {
        if (!press.wants(page)) {
            return false;
        }
        ImageData picture = new ImageLoader().load(new ByteArrayInputStream(png))[0];
        try {
            if (!there(press::beginPage)) {
                throw new IOException("The printer stopped at page " + page + ".");
            }
            for (int top = 0; top < picture.height; top += STRIP) {
                ImageData strip = strip(picture, top, Math.min(STRIP, picture.height - top));
                int from = top;
                there(() -> {
                    press.strip(strip, from, picture.height);
                    return true;
                });
            }
            return there(() -> {
                press.endPage();
                return true;
            });
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new IOException("Printing was stopped.", stop);
        }
    }

    private static ImageData strip(ImageData picture, int top, int height) {
        int from = top * picture.bytesPerLine;
        byte[] rows = Arrays.copyOfRange(picture.data, from, from + height * picture.bytesPerLine);
        return new ImageData(picture.width, height, picture.depth, picture.palette, picture.scanlinePad, rows);
    }

    /** Does it on the window's thread and waits for it. */
    private boolean there(BooleanSupplier step) throws InterruptedException {
        CompletableFuture<Boolean> done = new CompletableFuture<>();
        ui.later(() -> {
            try {
                done.complete(step.getAsBoolean());
            } catch (RuntimeException | Error problem) {
                done.completeExceptionally(problem);
            }
        });
        try {
            return done.get();
        } catch (ExecutionException problem) {
            if (problem.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(problem.getCause());
        }
    }
}
