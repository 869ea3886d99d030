package etamine.documents.internal;

import etamine.documents.Paper;

/**
 * How text looks on a page.
 *
 * @param size in points
 * @param bold whether it is heavier
 */
record Type(float size, boolean bold) {
    private static final float LEADING = 1.35f;

    /** From one base line to the next. */
    float line() {
        return size * LEADING;
    }

    Type heavy() {
        return new Type(size, true);
    }

    /** The sizes of one paper, all in the same proportion. */
    record Sizes(float factor) {

        static Sizes of(Paper.Print print) {
            return new Sizes(print == Paper.Print.LARGE ? 16 / 9.5f : 1);
        }

        Type title() {
            // Headings of large print need not grow as body text does.
            return new Type(18 * (1 + (factor - 1) / 2), true);
        }

        Type subtitle() {
            return new Type(11 * factor, false);
        }

        Type heading() {
            return new Type(12 * factor, true);
        }

        Type body() {
            return new Type(9.5f * factor, false);
        }

        Type foot() {
            return new Type(8 * (1 + (factor - 1) / 3), false);
        }

        /** A distance that grows with the type. */
        float gap(float points) {
            return points * factor;
        }
    }
}
