package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import etamine.testing.DisplayRule;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PaletteTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    /** Black on white is 21:1 by definition; #777777 on white is the well-known 4.48:1 just short of 4.5 (WCAG 2.1, W3C, 2018). */
    @ParameterizedTest
    @CsvSource(textBlock = """
            0,   255, 21.00
            119, 255,  4.48
            255, 255,  1.00
            """)
    void measuresContrastByThePublishedFormula(int grey, int ground, double expected) {
        assertThat(Palette.contrast(new RGB(grey, grey, grey), new RGB(ground, ground, ground)))
                .isCloseTo(expected, within(0.01));
    }

    @ParameterizedTest
    @EnumSource(Tone.class)
    void writesEveryToneSoThatItCanBeRead(Tone tone) {
        Palette palette = Palette.of(DISPLAY.display());
        double contrast =
                Palette.contrast(palette.text(tone).getRGB(), palette.paper().getRGB());
        assertThat(contrast).isGreaterThanOrEqualTo(4.5);
    }

    /** The seven chromatic values as published by Okabe and Ito, "Color Universal Design" (2008). */
    @ParameterizedTest
    @CsvSource(textBlock = """
            0, 0,   114, 178
            1, 230, 159, 0
            2, 0,   158, 115
            3, 204, 121, 167
            4, 86,  180, 233
            5, 213, 94,  0
            6, 240, 228, 66
            7, 0,   114, 178
            """)
    void drawsChartsInThePublishedColours(int index, int red, int green, int blue) {
        assertThat(Palette.of(DISPLAY.display()).series(index).getRGB()).isEqualTo(new RGB(red, green, blue));
    }

    @Test
    void writesOnChartColoursInWhatReadsBetter() {
        Palette palette = Palette.of(DISPLAY.display());
        for (int at = 0; at < 7; at++) {
            RGB ground = palette.series(at).getRGB();
            double chosen = Palette.contrast(palette.on(palette.series(at)).getRGB(), ground);
            assertThat(chosen).as("series %d", at).isGreaterThanOrEqualTo(3.0);
        }
    }
}
