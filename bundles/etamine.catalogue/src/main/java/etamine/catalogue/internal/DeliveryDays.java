package etamine.catalogue.internal;

import etamine.kitchen.supply.CutOff;
import etamine.kitchen.supply.Delivery;
import etamine.kitchen.supply.Supplier;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.stream.Stream;

/**
 * The deliveries a supplier's weekdays give, each with its cut-off on the house's clock. On the day the clocks go
 * forward a cut-off in the hour that is missing moves on by that hour; on the day they go back the earlier of the two
 * moments counts, so that an order is never late.
 *
 * @param zone of the house
 */
record DeliveryDays(ZoneId zone) {

    /** The deliveries from one day to another, both included, whatever the time is now. */
    Stream<Delivery> all(Supplier supplier, LocalDate from, LocalDate until) {
        if (until.isBefore(from)) {
            return Stream.empty();
        }
        return from.datesUntil(until.plusDays(1))
                .filter(day -> supplier.deliveryDays().contains(day.getDayOfWeek()))
                .map(day -> new Delivery(supplier.id(), day, orderBy(supplier, day)));
    }

    /** The deliveries that can still be ordered. */
    List<Delivery> open(Supplier supplier, ZonedDateTime now, LocalDate until) {
        LocalDate today = now.withZoneSameInstant(zone).toLocalDate();
        return all(supplier, today, until)
                .filter(delivery -> delivery.orderBy().toInstant().isAfter(now.toInstant()))
                .toList();
    }

    private ZonedDateTime orderBy(Supplier supplier, LocalDate day) {
        return supplier.cutOff()
                .map((CutOff cutOff) -> cutOff.before(day, zone).withEarlierOffsetAtOverlap())
                .orElseGet(() -> day.atStartOfDay(zone));
    }
}
