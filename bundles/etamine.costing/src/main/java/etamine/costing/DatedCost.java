package etamine.costing;

import etamine.kitchen.cost.PlateCost;
import java.time.LocalDate;

/**
 * What a plate cost on a day.
 *
 * @param day the day
 * @param plate the figures as they were
 * @param lowerBound whether a price was missing, so that the cost was at least that
 */
public record DatedCost(LocalDate day, PlateCost plate, boolean lowerBound) {}
