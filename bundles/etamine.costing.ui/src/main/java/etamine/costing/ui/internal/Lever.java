package etamine.costing.ui.internal;

import etamine.costing.Experiment;
import etamine.widgets.SliderRow;
import java.math.BigDecimal;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * Something that can be moved to see what happens.
 *
 * @param id which one, the same for the same thing
 * @param name what it is, in words
 * @param unit what its numbers are in
 * @param range what it spans and where it stands in the book
 * @param trial adds it at a value to an experiment
 * @param said a value in words beside the present one
 */
record Lever(
        String id,
        String name,
        String unit,
        SliderRow.Range range,
        BiFunction<Experiment, BigDecimal, Experiment> trial,
        Function<BigDecimal, String> said) {}
