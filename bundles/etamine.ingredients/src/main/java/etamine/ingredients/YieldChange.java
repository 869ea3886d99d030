package etamine.ingredients;

import etamine.measures.Ratio;
import java.time.LocalDate;

/**
 * One acceptance of a working yield.
 *
 * @param date the day
 * @param by who accepted; empty when not said
 * @param yield the yield accepted
 * @param source the tests it rests on, in words
 */
public record YieldChange(LocalDate date, String by, Ratio yield, String source) {}
