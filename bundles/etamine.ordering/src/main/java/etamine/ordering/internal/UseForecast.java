package etamine.ordering.internal;

import etamine.base.Problem;
import etamine.kitchen.use.ExpectedUse.DayUse;
import java.util.List;

/**
 * Expected use and what could not be reckoned.
 *
 * @param uses the use of every day and item
 * @param problems lines of recipes that could not be followed, each once
 */
record UseForecast(List<DayUse> uses, List<Problem> problems) {

    /** Copies the lists. */
    UseForecast {
        uses = List.copyOf(uses);
        problems = List.copyOf(problems);
    }
}
