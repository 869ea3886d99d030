package etamine.documents.internal;

/** Makes pixels fewer: each of the result is the mean of the area it covers, edges counted by their share. */
final class Means {
    private static final int COLOURS = 3;

    private final Pixels from;
    private final int wide;
    private final int[] firsts;
    private final float[][] shares;

    private Means(Pixels from, int wide) {
        this.from = from;
        this.wide = wide;
        this.firsts = new int[wide];
        this.shares = new float[wide][];
        for (int x = 0; x < wide; x++) {
            firsts[x] = first(x, from.width(), wide);
            shares[x] = shares(x, from.width(), wide);
        }
    }

    static int[] of(Pixels from, int wide, int high) {
        Means means = new Means(from, wide);
        int[] result = new int[wide * high];
        for (int y = 0; y < high; y++) {
            means.row(y, high, result);
        }
        return result;
    }

    private static int first(int place, int all, int kept) {
        return (int) ((long) place * all / kept);
    }

    /** How much of each source pixel, from the first on, one pixel of the result covers; together 1. */
    private static float[] shares(int place, int all, int kept) {
        int first = first(place, all, kept);
        double from = (double) place * all / kept;
        double to = (double) (place + 1) * all / kept;
        int count = Math.min(all, (int) Math.ceil(to - 1e-9)) - first;
        float[] shares = new float[count];
        for (int i = 0; i < count; i++) {
            double covered = Math.min(to, first + i + 1.0) - Math.max(from, first + i);
            shares[i] = (float) (covered / (to - from));
        }
        return shares;
    }

    private void row(int y, int high, int[] result) {
        float[] sums = new float[wide * COLOURS];
        int first = first(y, from.height(), high);
        float[] rows = shares(y, from.height(), high);
        for (int i = 0; i < rows.length; i++) {
            add(sums, (first + i) * from.width(), rows[i]);
        }
        for (int x = 0; x < wide; x++) {
            int red = Math.round(sums[x * COLOURS]);
            int green = Math.round(sums[x * COLOURS + 1]);
            int blue = Math.round(sums[x * COLOURS + 2]);
            result[y * wide + x] = red << 16 | green << 8 | blue;
        }
    }

    private void add(float[] sums, int row, float share) {
        for (int x = 0; x < wide; x++) {
            float[] columns = shares[x];
            for (int i = 0; i < columns.length; i++) {
                int pixel = from.rgb()[row + firsts[x] + i];
                float part = columns[i] * share;
                sums[x * COLOURS] += (pixel >> 16 & 0xFF) * part;
                sums[x * COLOURS + 1] += (pixel >> 8 & 0xFF) * part;
                sums[x * COLOURS + 2] += (pixel & 0xFF) * part;
            }
        }
    }
}
