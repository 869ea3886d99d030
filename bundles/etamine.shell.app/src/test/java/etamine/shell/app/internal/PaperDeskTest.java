package etamine.shell.app.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Printout;
import etamine.testing.DisplayRule;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Printing to an invented printer that notes what happens on it. */
class PaperDeskTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    @TempDir
    Path folder;

    @Test
    void printsEveryPageAskedForInStripsThatCoverIt() {
        Shop shop = new Shop(true);
        shop.from = 2;
        Shell shell = DISPLAY.shell(600, 100);
        desk(shell, shop).print(new ThreePages());
        DISPLAY.until("the printout said to be sent", () -> said(shell).startsWith("Card was sent"));
        assertThat(said(shell)).isEqualTo("Card was sent to the printer: 2 pages.");
        assertThat(shop.happened)
                .containsExactly(
                        "begin Card",
                        "page",
                        "0+400 of 1000",
                        "400+400 of 1000",
                        "800+200 of 1000",
                        "end",
                        "page",
                        "0+400 of 1000",
                        "400+400 of 1000",
                        "800+200 of 1000",
                        "end",
                        "printed true");
    }

    @Test
    void throwsTheJobAwayWhenThePrinterStops() {
        Shop shop = new Shop(true);
        shop.pagesTaken = 1;
        Shell shell = DISPLAY.shell(600, 100);
        desk(shell, shop).print(new ThreePages());
        DISPLAY.until("the failure to be said", () -> said(shell).contains("stopped at page 2"));
        assertThat(shop.happened).endsWith("printed false");
    }

    @Test
    void saysThatThePrinterDoesNotTakeIt() {
        Shop shop = new Shop(true);
        shop.takes = false;
        Shell shell = DISPLAY.shell(600, 100);
        desk(shell, shop).print(new ThreePages());
        DISPLAY.until("the refusal to be said", () -> said(shell).contains("does not take it"));
        assertThat(shop.happened).containsExactly("begin Card", "printed false");
    }

    @Test
    void doesNothingWhenNoPrinterWasPicked() {
        Shop shop = new Shop(true);
        shop.picks = false;
        Shell shell = DISPLAY.shell(600, 100);
        desk(shell, shop).print(new ThreePages());
        DISPLAY.settle();
        assertThat(said(shell)).isEmpty();
    }

    @Test
    void offersToSaveWhereThereIsNoPrinter() {
        Path file = folder.resolve("card.pdf");
        Shell shell = DISPLAY.shell(600, 100);
        PaperDesk desk = desk(shell, new Shop(false));
        desk.places(name -> Optional.of(file));
        DISPLAY.display().timerExec(200, () -> acceptDialog(shell));
        desk.print(new ThreePages());
        DISPLAY.until("the file to be saved", () -> said(shell).contains("was saved to"));
        assertThat(file).hasContent("pdf");
    }

    @Test
    void savesAsAWebPageWhereTheNameEndsSo() throws IOException {
        Path file = folder.resolve("card.HTML");
        Shell shell = DISPLAY.shell(600, 100);
        PaperDesk desk = desk(shell, new Shop(false));
        desk.places(name -> Optional.of(file));
        desk.save(new ThreePages());
        DISPLAY.until("the file to be saved", () -> said(shell).contains("was saved to"));
        assertThat(Files.readString(file)).isEqualTo("html");
    }

    @Test
    void keepsProportionsAndLeavesNoGapBetweenStrips() {
        Rectangle paper = new Rectangle(-10, -20, 1000, 1400);
        List<Rectangle> strips = new ArrayList<>();
        for (int top = 0; top < 999; top += 333) {
            strips.add(PageFit.strip(paper, 500, 999, top, 333));
        }
        assertThat(strips.get(0).x).isEqualTo(strips.get(2).x);
        assertThat(strips.get(0).width).isEqualTo(1400 * 500 / 999);
        assertThat(strips.get(0).y).isEqualTo(-20);
        assertThat(strips.get(1).y).isEqualTo(strips.get(0).y + strips.get(0).height);
        assertThat(strips.get(2).y + strips.get(2).height).isEqualTo(-20 + 1400);
    }

    private static PaperDesk desk(Shell shell, Shop shop) {
        shell.setLayout(new GridLayout());
        Ui ui = new Ui(shell);
        WorkLine work = new WorkLine(shell, ui);
        shell.open();
        return new PaperDesk(shell, work, ui, shop);
    }

    private static void acceptDialog(Shell parent) {
        Shell dialog = parent.getShells()[0];
        DISPLAY.select(DISPLAY.find(dialog, "dialog:ok", Button.class));
    }

    private static String said(Shell shell) {
        return DISPLAY.find(shell, "status", Label.class).getText();
    }

    private static final class Shop implements Press.Shop, Press {
        final List<String> happened = new ArrayList<>();
        private final boolean any;
        boolean takes = true;
        boolean picks = true;
        int from = 1;
        int pagesTaken = 99;

        Shop(boolean any) {
            this.any = any;
        }

        @Override
        public boolean any() {
            return any;
        }

        @Override
        public Optional<Press> pick(Shell shell) {
            return picks ? Optional.of(this) : Optional.empty();
        }

        @Override
        public boolean begin(String title) {
            happened.add("begin " + title);
            return takes;
        }

        @Override
        public boolean wants(int page) {
            return page >= from;
        }

        @Override
        public boolean beginPage() {
            happened.add("page");
            return pagesTaken-- > 0;
        }

        @Override
        public void strip(ImageData strip, int top, int rows) {
            happened.add(top + "+" + strip.height + " of " + rows);
        }

        @Override
        public void endPage() {
            happened.add("end");
        }

        @Override
        public void end(boolean printed) {
            happened.add("printed " + printed);
        }
    }

    private static final class ThreePages implements Printout {
        @Override
        public String title() {
            return "Card";
        }

        @Override
        public void pdf(Path file) throws IOException {
            Files.writeString(file, "pdf");
        }

        @Override
        public void html(Path file) throws IOException {
            Files.writeString(file, "html");
        }

        @Override
        public void pages(int dotsPerInch, PageSink sink) throws IOException {
            ImageLoader loader = new ImageLoader();
            loader.data = new ImageData[] {new ImageData(700, 1000, 24, new PaletteData(0xFF0000, 0xFF00, 0xFF))};
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            loader.save(png, SWT.IMAGE_PNG);
            for (int page = 1; page <= 3 && sink.page(page, 3, png.toByteArray()); page++) {
                assertThat(dotsPerInch).isGreaterThanOrEqualTo(300);
            }
        }
    }
}
