package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.testing.DisplayRule;
import java.util.List;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class DrawingTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private static final int WIDTH = 600;

    @Test
    void drawsBarsAsLongAsTheirShare() {
        Bars bars = new Bars(DISPLAY.shell(WIDTH, 200));
        bars.show(List.of(new Bars.Bar("Cream", 0.25, 0, "", Tone.BAD), new Bars.Bar("Butter", 1.0, 0, "", Tone.WARN)));
        ImageData data = drawn(bars, 120);
        Palette palette = Palette.of(bars);
        double quarter = count(data, palette.fill(Tone.BAD).getRGB());
        double whole = count(data, palette.fill(Tone.WARN).getRGB());
        assertThat(quarter / whole).isBetween(0.22, 0.28);
    }

    @Test
    void drawsBlocksInProportion() {
        StackBlocks blocks = new StackBlocks(DISPLAY.shell(WIDTH, 200));
        blocks.show(List.of(new StackBlocks.Block("", 3, ""), new StackBlocks.Block("", 1, "")));
        ImageData data = drawn(blocks, 120);
        int row = 12;
        assertThat((double) inRow(data, row, Palette.of(blocks).series(0).getRGB())
                        / inRow(data, row, Palette.of(blocks).series(1).getRGB()))
                .isBetween(2.8, 3.2);
    }

    @Test
    void saysInWordsWhatThePicturesShow() {
        Shell shell = DISPLAY.shell(WIDTH, 200);
        Bars bars = new Bars(shell);
        bars.show(List.of(new Bars.Bar("Cream", 0.5, 1, "4 l of 8 l", Tone.WARN)));
        StackBlocks blocks = new StackBlocks(shell);
        blocks.show(List.of(new StackBlocks.Block("Jus", 1, "1.40 EUR")));
        Spark spark = new Spark(shell);
        spark.show("Price of cream", List.of(new Spark.Mark(4, "4.00"), new Spark.Mark(5, "5.00")));
        assertThat(bars.description()).isEqualTo("Cream: 4 l of 8 l");
        assertThat(blocks.description()).isEqualTo("Jus: 1.40 EUR");
        assertThat(spark.description()).isEqualTo("Price of cream: 2 values from 4.00 to 5.00");
    }

    @Test
    void drawsALineThatRisesWithItsValues() {
        Spark spark = new Spark(DISPLAY.shell(WIDTH, 100));
        spark.show("", List.of(new Spark.Mark(1, ""), new Spark.Mark(2, ""), new Spark.Mark(3, "")));
        ImageData data = drawn(spark, 60);
        RGB line = Palette.of(spark).fill(Tone.PLAIN).getRGB();
        assertThat(topOf(data, WIDTH - 24, line)).isLessThan(topOf(data, 24, line));
    }

    @Test
    void drawsNothingButAWordWithoutValues() {
        Spark spark = new Spark(DISPLAY.shell(WIDTH, 100));
        ImageData data = drawn(spark, 60);
        assertThat(count(data, Palette.of(spark).fill(Tone.PLAIN).getRGB())).isZero();
        assertThat(spark.description()).endsWith("no values");
    }

    private static ImageData drawn(Drawing drawing, int height) {
        Image image = new Image(DISPLAY.display(), WIDTH, height);
        GC gc = new GC(image);
        try {
            gc.setBackground(Palette.of(drawing).paper());
            gc.fillRectangle(0, 0, WIDTH, height);
            drawing.draw(gc, new Rectangle(0, 0, WIDTH, height), Palette.of(drawing));
            return image.getImageData(100);
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    private static int count(ImageData data, RGB wanted) {
        int found = 0;
        for (int y = 0; y < data.height; y++) {
            found += inRow(data, y, wanted);
        }
        return found;
    }

    private static int inRow(ImageData data, int y, RGB wanted) {
        int found = 0;
        for (int x = 0; x < data.width; x++) {
            found += near(data, x, y, wanted) ? 1 : 0;
        }
        return found;
    }

    private static int topOf(ImageData data, int x, RGB wanted) {
        for (int y = 0; y < data.height; y++) {
            if (near(data, x, y, wanted)) {
                return y;
            }
        }
        return data.height;
    }

    private static boolean near(ImageData data, int x, int y, RGB wanted) {
        RGB is = data.palette.getRGB(data.getPixel(x, y));
        return Math.abs(is.red - wanted.red) + Math.abs(is.green - wanted.green) + Math.abs(is.blue - wanted.blue) < 30;
    }
}
