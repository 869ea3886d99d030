package etamine.testing;

import etamine.kitchen.house.House;
import etamine.kitchen.house.Kitchen;
import etamine.measures.MeasureStyle;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Currency;

/** A house whose settings and clock a test sets. Thread-safe. */
public final class SetKitchen implements Kitchen {
    private final Clock clock;
    private volatile House house;

    /** A house with these settings and that clock, in the house's zone. */
    public SetKitchen(House house, Clock clock) {
        this.house = house;
        this.clock = clock;
    }

    /** A metric house in Dublin that counts in euros, at an instant written as in {@code 2026-11-24T09:00:00Z}. */
    public static SetKitchen at(String instant) {
        ZoneId zone = ZoneId.of("Europe/Dublin");
        House house = new House("Test kitchen", Currency.getInstance("EUR"), zone, MeasureStyle.METRIC);
        return new SetKitchen(house, SetClock.at(instant));
    }

    @Override
    public House house() {
        return house;
    }

    @Override
    public void change(House settings) {
        house = settings;
    }

    @Override
    public Clock clock() {
        return clock.withZone(house.zone());
    }
}
