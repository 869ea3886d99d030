package etamine.catalogue.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.supply.CutOff;
import etamine.kitchen.supply.Delivery;
import etamine.kitchen.supply.Supplier;
import etamine.measures.Money;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Clock changes of Europe/Dublin, from the tz database: forward on 29 March 2026 at 01:00, back on 25 October 2026. */
class DeliveryDaysTest {
    private static final ZoneId DUBLIN = ZoneId.of("Europe/Dublin");
    private final DeliveryDays days = new DeliveryDays(DUBLIN);

    private static Supplier supplier(Optional<CutOff> cutOff, DayOfWeek... deliveryDays) {
        Money nothing = Money.zero(Currency.getInstance("EUR"));
        return new Supplier("dairy", "Hill Dairy", "", Set.of(deliveryDays), cutOff, nothing, nothing);
    }

    private static CutOff cutOff(int daysBefore, String time) {
        return new CutOff(daysBefore, LocalTime.parse(time));
    }

    private List<LocalDate> open(Supplier supplier, String now, String until) {
        return days.open(supplier, ZonedDateTime.parse(now), LocalDate.parse(until)).stream()
                .map(Delivery::day)
                .toList();
    }

    @Test
    void leavesOutADeliveryWhoseCutOffHasPassed() {
        Supplier dairy = supplier(Optional.of(cutOff(1, "22:00")), DayOfWeek.TUESDAY, DayOfWeek.FRIDAY);
        assertThat(open(dairy, "2026-11-26T21:59:59Z", "2026-12-04"))
                .containsExactly(LocalDate.of(2026, 11, 27), LocalDate.of(2026, 12, 1), LocalDate.of(2026, 12, 4));
        assertThat(open(dairy, "2026-11-26T22:00:00Z", "2026-12-04"))
                .containsExactly(LocalDate.of(2026, 12, 1), LocalDate.of(2026, 12, 4));
    }

    @Test
    void keepsTheLocalTimeOfTheCutOffWhenTheClocksGoForward() {
        Supplier dairy = supplier(Optional.of(cutOff(1, "22:00")), DayOfWeek.SUNDAY, DayOfWeek.MONDAY);
        List<Delivery> open = days.open(dairy, ZonedDateTime.parse("2026-03-27T12:00:00Z"), LocalDate.of(2026, 3, 30));
        assertThat(open)
                .extracting(d -> d.orderBy().toInstant())
                .containsExactly(Instant.parse("2026-03-28T22:00:00Z"), Instant.parse("2026-03-29T21:00:00Z"));
    }

    @Test
    void keepsTheLocalTimeOfTheCutOffWhenTheClocksGoBack() {
        Supplier dairy = supplier(Optional.of(cutOff(1, "22:00")), DayOfWeek.SUNDAY, DayOfWeek.MONDAY);
        List<Delivery> open = days.open(dairy, ZonedDateTime.parse("2026-10-23T12:00:00Z"), LocalDate.of(2026, 10, 26));
        assertThat(open)
                .extracting(d -> d.orderBy().toInstant())
                .containsExactly(Instant.parse("2026-10-24T21:00:00Z"), Instant.parse("2026-10-25T22:00:00Z"));
    }

    @Test
    void movesACutOffInTheMissingHourOnByThatHour() {
        Supplier baker = supplier(Optional.of(cutOff(0, "01:30")), DayOfWeek.SUNDAY);
        Delivery delivery = days.all(baker, LocalDate.of(2026, 3, 29), LocalDate.of(2026, 3, 29))
                .findFirst()
                .orElseThrow();
        assertThat(delivery.orderBy().toLocalTime()).isEqualTo(LocalTime.of(2, 30));
        assertThat(delivery.orderBy().toInstant()).isEqualTo(Instant.parse("2026-03-29T01:30:00Z"));
    }

    @Test
    void takesTheEarlierOfTwoEqualTimesSoThatAnOrderIsNeverLate() {
        Supplier baker = supplier(Optional.of(cutOff(0, "01:30")), DayOfWeek.SUNDAY);
        Delivery delivery = days.all(baker, LocalDate.of(2026, 10, 25), LocalDate.of(2026, 10, 25))
                .findFirst()
                .orElseThrow();
        assertThat(delivery.orderBy().toInstant()).isEqualTo(Instant.parse("2026-10-25T00:30:00Z"));
        assertThat(delivery.orderBy().getOffset().getTotalSeconds())
                .isEqualTo(Duration.ofHours(1).toSeconds());
    }

    @Test
    void closesAtTheStartOfTheDayWithoutACutOff() {
        Supplier grower = supplier(Optional.empty(), DayOfWeek.WEDNESDAY);
        assertThat(open(grower, "2026-11-24T23:59:59Z", "2026-11-25")).containsExactly(LocalDate.of(2026, 11, 25));
        assertThat(open(grower, "2026-11-25T00:00:00Z", "2026-11-25")).isEmpty();
    }

    @Test
    void asksTheHousesZoneWhichDayItIs() {
        Supplier grower = supplier(Optional.of(cutOff(0, "06:00")), DayOfWeek.TUESDAY);
        // 18:30 in New York on Monday is 23:30 in Dublin; 20:30 there is already Tuesday here.
        assertThat(open(grower, "2026-11-23T18:30:00-05:00", "2026-11-24")).containsExactly(LocalDate.of(2026, 11, 24));
        assertThat(open(grower, "2026-11-24T01:30:00-05:00", "2026-11-24")).isEmpty();
    }
}
