package etamine.documents.internal;

import static etamine.documents.internal.GivenPictures.BLUE;
import static etamine.documents.internal.GivenPictures.GREEN;
import static etamine.documents.internal.GivenPictures.RED;
import static etamine.documents.internal.GivenPictures.WHITE;
import static org.assertj.core.api.Assertions.assertThat;

import etamine.documents.Picture;
import etamine.documents.Pictures;
import etamine.documents.Pictures.Taken;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CameraPicturesTest {
    private static final Map<Character, Integer> COLOURS = Map.of('R', RED, 'G', GREEN, 'B', BLUE, 'W', WHITE);
    private final Pictures pictures = new CameraPictures();

    /**
     * The stored picture is R G over B W. Where its first row and column belong: CIPA DC-008-2019 (Exif 2.32), 4.6.5,
     * Orientation (published): 1 top left, 2 top right, 3 bottom right, 4 bottom left, 5 left top, 6 right top, 7 right
     * bottom, 8 left bottom. The quarters are read from there by hand.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            1, RGBW, 60, 40
            2, GRWB, 60, 40
            3, WBGR, 60, 40
            4, BWRG, 60, 40
            5, RBGW, 40, 60
            6, BRWG, 40, 60
            7, WGBR, 40, 60
            8, GWRB, 40, 60
            """)
    void turnsPicturesUpright(int orientation, String quarters, int width, int height) throws IOException {
        for (boolean little : new boolean[] {true, false}) {
            byte[] file = GivenPictures.oriented(GivenPictures.quarters(60, 40), orientation, little);
            Picture taken = GivenPictures.ready(pictures.take(file));
            assertThat(taken.width()).isEqualTo(width);
            assertThat(taken.height()).isEqualTo(height);
            assertQuarters(GivenPictures.shown(taken), quarters);
        }
    }

    private static void assertQuarters(BufferedImage image, String quarters) {
        for (int i = 0; i < 4; i++) {
            int pixel = image.getRGB(image.getWidth() * (1 + i % 2 * 2) / 4, image.getHeight() * (1 + i / 2 * 2) / 4);
            int colour = COLOURS.get(quarters.charAt(i));
            assertThat(GivenPictures.near(pixel, colour))
                    .as("quarter %d is %06x, not %06x", i, pixel & 0xFFFFFF, colour)
                    .isTrue();
        }
    }

    @Test
    void keepsNothingOfTheFileButThePixels() throws IOException {
        byte[] file = GivenPictures.oriented(GivenPictures.quarters(60, 40), 6, true);
        assertThat(new String(file, StandardCharsets.ISO_8859_1)).contains("SECRETPLACE", "Exif");
        byte[] kept = GivenPictures.ready(pictures.take(file)).bytes();
        assertThat(new String(kept, StandardCharsets.ISO_8859_1)).doesNotContain("SECRETPLACE", "Exif");
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpeg", "png", "gif", "bmp"})
    void takesEveryForm(String form) throws IOException {
        Picture taken = GivenPictures.ready(pictures.take(GivenPictures.file(GivenPictures.quarters(64, 48), form)));
        assertQuarters(GivenPictures.shown(taken), "RGBW");
        assertThat(taken.width()).isEqualTo(64);
    }

    @Test
    void makesLargePicturesSmallEvenWhenTheyHardlyShrink() throws IOException {
        Picture plain =
                GivenPictures.ready(pictures.take(GivenPictures.file(GivenPictures.quarters(4000, 3000), "jpeg")));
        assertThat(plain.width()).isEqualTo(Pictures.LONGEST_EDGE);
        assertThat(plain.height()).isEqualTo(960);
        assertQuarters(GivenPictures.shown(plain), "RGBW");
        Picture noisy = GivenPictures.ready(pictures.take(GivenPictures.file(GivenPictures.noise(1500, 1500), "jpeg")));
        assertThat(noisy.bytes().length).isLessThanOrEqualTo(Pictures.LARGEST_KEPT);
    }

    @Test
    void takesPicturesOfOnePixelAndOfOneRow() throws IOException {
        assertThat(GivenPictures.ready(pictures.take(GivenPictures.file(GivenPictures.quarters(1, 1), "png"))))
                .matches(taken -> taken.width() == 1 && taken.height() == 1);
        assertThat(GivenPictures.ready(pictures.take(GivenPictures.file(GivenPictures.quarters(9000, 1), "png"))))
                .matches(taken -> taken.width() == 1280 && taken.height() == 1);
    }

    @Test
    void laysTransparentPicturesOnWhite() throws IOException {
        BufferedImage image = new BufferedImage(40, 40, BufferedImage.TYPE_INT_ARGB);
        for (int i = 0; i < 1600; i++) {
            image.setRGB(i % 40, i / 40, i < 800 ? 0 : 0x80000000);
        }
        BufferedImage shown = GivenPictures.shown(GivenPictures.ready(pictures.take(GivenPictures.file(image, "png"))));
        assertThat(GivenPictures.near(shown.getRGB(20, 5), WHITE)).isTrue();
        assertThat(GivenPictures.near(shown.getRGB(20, 35), 0x7F7F7F)).isTrue(); // half of black and half of white
    }

    @ParameterizedTest
    @ValueSource(ints = {BufferedImage.TYPE_BYTE_GRAY, BufferedImage.TYPE_USHORT_GRAY})
    void keepsGreyAsTheFileHasIt(int type) throws IOException {
        BufferedImage image = new BufferedImage(16, 16, type);
        int most = (1 << image.getColorModel().getComponentSize(0)) - 1;
        for (int i = 0; i < 256; i++) {
            image.getRaster().setSample(i % 16, i / 16, 0, most / 2);
        }
        BufferedImage shown = GivenPictures.shown(GivenPictures.ready(pictures.take(GivenPictures.file(image, "png"))));
        assertThat(GivenPictures.near(shown.getRGB(8, 8), 0x7F7F7F)).isTrue();
    }

    /**
     * Ink c, m, y, k of 255 shows as (255-c)(255-k)/255 and so on (common practice without a profile). Adobe programs
     * store 255 less; coded as YCCK the first three are luminance and differences of 255 less those (ITU-T T.872, 6.5.3,
     * and T.871): red 0, green 255, blue 255 of paper are 255, 0, 0 turned over, that is 76, 85, 255.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            0, 255, 255, 0,   -1, FF0000
            0, 0, 0, 255,     -1, 000000
            0, 0, 0, 128,     -1, 7F7F7F
            255, 0, 0, 255,    0, FF0000
            255, 255, 255, 127, 0, 7F7F7F
            179, 171, 1, 255,  2, FF0000
            """)
    void showsPrintersPictures(int c, int m, int y, int k, int transform, String colour) throws IOException {
        byte[] file = GivenPictures.fourColours(new int[] {c, m, y, k}, transform);
        BufferedImage shown = GivenPictures.shown(GivenPictures.ready(pictures.take(file)));
        assertThat(GivenPictures.near(shown.getRGB(8, 8), Integer.parseInt(colour, 16)))
                .as("%06x", shown.getRGB(8, 8) & 0xFFFFFF)
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpeg", "png", "gif", "bmp"})
    void refusesPicturesThatEndTooEarly(String form) throws IOException {
        byte[] file = GivenPictures.file(GivenPictures.noise(300, 200), form);
        for (int parts = 1; parts < 8; parts++) {
            assertThat(pictures.take(Arrays.copyOf(file, file.length * parts / 8)))
                    .as("%d eighths", parts)
                    .isInstanceOf(Taken.Refused.class);
        }
    }

    /** A head of 33 bytes that claims 100,000 x 100,000 pixels, 40 GB when unpacked. */
    @Test
    void refusesWhatWouldFillTheMemoryBeforeUnpackingIt() throws IOException {
        byte[] file = GivenPictures.file(GivenPictures.quarters(4, 4), "png");
        for (int at : new int[] {16, 20}) {
            file[at] = 0;
            file[at + 1] = 1;
            file[at + 2] = (byte) 0x86;
            file[at + 3] = (byte) 0xA0;
        }
        assertThat(text(pictures.take(file))).contains("100000 x 100000", "60 million", "smaller");
    }

    @Test
    void refusesWhatIsNoPicture() {
        assertThat(text(pictures.take(new byte[0]))).contains("empty");
        assertThat(text(pictures.take("<svg/>".getBytes(StandardCharsets.UTF_8))))
                .contains("save it as JPEG");
        assertThat(text(pictures.take("....ftypheic....".getBytes(StandardCharsets.UTF_8))))
                .contains("HEIC");
        assertThat(text(pictures.take(new byte[Pictures.LARGEST_FILE + 1]))).contains("25 MB");
        assertThat(text(pictures.take(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 0, 0})))
                .contains("damaged");
    }

    @Test
    void survivesAnyDamage() throws IOException {
        for (String form : new String[] {"jpeg", "png", "gif", "bmp"}) {
            byte[] file = GivenPictures.file(GivenPictures.noise(40, 30), form);
            java.util.Random random = new java.util.Random(5);
            for (int round = 0; round < 200; round++) {
                byte[] damaged = file.clone();
                for (int i = 0; i < 3; i++) {
                    damaged[random.nextInt(Math.min(damaged.length, 400))] = (byte) random.nextInt();
                }
                assertThat(pictures.take(damaged)).isInstanceOf(Taken.class);
            }
        }
    }

    @Test
    void looksAtWhatIsKeptWithoutUnpackingIt() throws IOException {
        Picture taken = GivenPictures.ready(pictures.take(GivenPictures.file(GivenPictures.quarters(30, 20), "png")));
        assertThat(GivenPictures.ready(pictures.look(taken.base64()))).isEqualTo(taken);
        assertThat(text(pictures.look("no base64!"))).contains("base64");
        assertThat(text(pictures.look("aGVsbG8="))).contains("no JPEG");
    }

    @Test
    void givesSmallerCopiesToShow() throws IOException {
        Picture taken = GivenPictures.ready(pictures.take(GivenPictures.file(GivenPictures.quarters(900, 600), "png")));
        Picture small = GivenPictures.ready(pictures.within(taken, 300));
        assertThat(small.width()).isEqualTo(300);
        assertThat(small.height()).isEqualTo(200);
        assertThat(GivenPictures.ready(pictures.within(taken, 900))).isSameAs(taken);
    }

    private static String text(Taken taken) {
        assertThat(taken).isInstanceOf(Taken.Refused.class);
        return ((Taken.Refused) taken).text();
    }
}
