package etamine.widgets;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A range of values with even, round steps.
 *
 * @param low where it starts, on a step
 * @param high where it ends, on a step
 * @param step from mark to mark: 1, 2 or 5 of some power of ten
 */
record AxisScale(double low, double high, double step) {
    private static final double ALMOST = 1e-9;

    /** A range over all of these values in at most about {@code most} steps. */
    static AxisScale over(double least, double greatest, int most) {
        double span = greatest - least;
        double room = span > 0 ? span : Math.max(1, Math.abs(greatest));
        double step = roundStep(room / Math.max(1, most));
        double low = Math.floor(least / step + ALMOST) * step;
        double high = Math.ceil(greatest / step - ALMOST) * step;
        return new AxisScale(low, high > low ? high : low + step, step);
    }

    /** Where a value stands, 0 being the start and 1 the end. */
    double share(double value) {
        return (value - low) / (high - low);
    }

    /** The values at the steps, both ends included. */
    List<Double> marks() {
        List<Double> marks = new ArrayList<>();
        long steps = Math.round((high - low) / step);
        for (long at = 0; at <= steps; at++) {
            marks.add(low + at * step);
        }
        return marks;
    }

    /** A value with as many decimals as the steps need. */
    String text(double value) {
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + ALMOST));
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    }

    private static double roundStep(double wanted) {
        double power = Math.pow(10, Math.floor(Math.log10(wanted)));
        double part = wanted / power;
        double round = part <= 1 + ALMOST ? 1 : part <= 2 + ALMOST ? 2 : part <= 5 + ALMOST ? 5 : 10;
        return round * power;
    }
}
