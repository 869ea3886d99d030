package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.testing.DisplayRule;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IconsTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pass",
                "ingredients",
                "recipes",
                "costing",
                "suppliers",
                "stock",
                "covers",
                "orders",
                "modules",
                "add",
                "remove",
                "edit",
                "undo",
                "redo",
                "search",
                "warning",
                "print",
                "export",
                "receive",
                "count",
                "waste",
                "issue",
                "catalogue",
                "inventory",
                "diary",
                "ordering",
                "etamine"
            })
    void drawsEveryIconInTheColourAskedFor(String name) {
        Palette palette = Palette.of(DISPLAY.display());
        Image image = Icons.image(DISPLAY.display(), name, 24, palette.series(5));
        assertThat(Icons.exists(name)).isTrue();
        assertThat(opaqueNear(image.getImageData(100), 213, 94, 0)).isGreaterThan(5);
    }

    @Test
    void drawsTwiceThePixelsAtTwiceTheZoom() {
        Image image = Icons.image(
                DISPLAY.display(), "stock", 16, Palette.of(DISPLAY.display()).ink());
        assertThat(image.getImageData(100).width).isEqualTo(16);
        assertThat(image.getImageData(200).width).isEqualTo(32);
        assertThat(image.getImageData(300).height).isEqualTo(48);
    }

    @Test
    void givesADotForANameWithoutADrawing() {
        Shell shell = DISPLAY.shell(100, 100);
        assertThat(Icons.exists("no such thing")).isFalse();
        assertThat(Icons.small(shell, "no such thing").isDisposed()).isFalse();
    }

    @Test
    void keepsOneImageForTheSameWish() {
        Shell shell = DISPLAY.shell(100, 100);
        assertThat(Icons.small(shell, "add")).isSameAs(Icons.small(shell, "add"));
        assertThat(Icons.small(shell, "add")).isNotSameAs(Icons.small(shell, "add", Tone.BAD));
    }

    private static int opaqueNear(ImageData data, int red, int green, int blue) {
        int found = 0;
        for (int y = 0; y < data.height; y++) {
            for (int x = 0; x < data.width; x++) {
                var rgb = data.palette.getRGB(data.getPixel(x, y));
                int distance = Math.abs(rgb.red - red) + Math.abs(rgb.green - green) + Math.abs(rgb.blue - blue);
                found += data.getAlpha(x, y) > 200 && distance < 40 ? 1 : 0;
            }
        }
        return found;
    }
}
