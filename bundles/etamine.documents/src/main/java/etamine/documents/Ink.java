package etamine.documents;

/**
 * A colour on paper. Colour never carries a meaning alone: beside it stands a word or a mark.
 *
 * @param rgb red, green and blue, eight bits each
 */
public record Ink(int rgb) {
    /** For text and outlines. */
    public static final Ink BLACK = new Ink(0x000000);

    /** For text that matters less. */
    public static final Ink GREY = new Ink(0x5A5A5A);

    /** For the ground of something. */
    public static final Ink PALE = new Ink(0xE6E6E6);

    /** For text on dark ground. */
    public static final Ink WHITE = new Ink(0xFFFFFF);

    /** Colours that people with any colour vision tell apart: M. Okabe and K. Ito, Color Universal Design, 2008. */
    private static final int[] SERIES = {
        0x56B4E9, 0xE69F00, 0x009E73, 0xF0E442, 0x0072B2, 0xD55E00, 0xCC79A7,
    };

    /** Checks that it is a colour. */
    public Ink {
        if (rgb < 0 || rgb > 0xFFFFFF) {
            throw new IllegalArgumentException("A colour has eight bits each of red, green and blue.");
        }
    }

    /** The colour of the n-th thing in a picture, counted from 0; they come round again after seven. */
    public static Ink series(int n) {
        return new Ink(SERIES[Math.floorMod(n, SERIES.length)]);
    }

    /** Red, from 0 to 255. */
    public int red() {
        return rgb >> 16;
    }

    /** Green, from 0 to 255. */
    public int green() {
        return rgb >> 8 & 0xFF;
    }

    /** Blue, from 0 to 255. */
    public int blue() {
        return rgb & 0xFF;
    }

    /** Whether text on it had better be white. */
    public boolean dark() {
        return red() * 299 + green() * 587 + blue() * 114 < 128_000;
    }
}
