package etamine.ordering.internal;

import etamine.kitchen.use.ExpectedUse;
import java.time.LocalDate;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/**
 * Expects use from the diary: what was written wins for its item and day; else covers times mix, followed through the
 * recipes net of made components on hand; else the sales of that weekday; without any of these, nothing.
 */
@Component(service = {ExpectedUse.class, DiaryUse.class})
public final class DiaryUse implements ExpectedUse {
    private final Neighbours neighbours;

    /** Expects from what the neighbours know. */
    @Activate
    public DiaryUse(@Reference Neighbours neighbours) {
        this.neighbours = neighbours;
    }

    @Override
    public List<DayUse> between(LocalDate from, LocalDate to) {
        return forecast(from, to).uses();
    }

    /** The same with what could not be reckoned. */
    UseForecast forecast(LocalDate from, LocalDate to) {
        return neighbours
                .diary()
                .map(diary -> new UseReckoning(neighbours, diary, from, to).run())
                .orElseGet(() -> new UseForecast(List.of(), List.of()));
    }
}
