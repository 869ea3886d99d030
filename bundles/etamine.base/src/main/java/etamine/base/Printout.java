package etamine.base;

import java.io.IOException;
import java.nio.file.Path;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Something laid out for paper: whoever has it can save it, show it or send it to a printer without knowing how it was
 * made. Thread-safe; each call may take a second for a long paper, so none belongs on the window's thread.
 */
@ProviderType
public interface Printout {

    /** What it is called, such as {@code Celeriac purée}. */
    String title();

    /** Writes it as PDF; the file is complete or absent. */
    void pdf(Path file) throws IOException;

    /** Writes it as one self-contained HTML page; the file is complete or absent. */
    void html(Path file) throws IOException;

    /**
     * Draws its pages one after another, so that only one picture is in memory at a time.
     *
     * @param dotsPerInch the resolution, from 36 to 600
     */
    void pages(int dotsPerInch, PageSink sink) throws IOException;

    /** Receives the pages. */
    @FunctionalInterface
    interface PageSink {

        /**
         * Takes one page.
         *
         * @param page its number, counted from 1
         * @param of how many there are
         * @param png the page as a PNG picture
         * @return whether to go on; false leaves the remaining pages undrawn
         */
        boolean page(int page, int of, byte[] png) throws IOException;
    }
}
