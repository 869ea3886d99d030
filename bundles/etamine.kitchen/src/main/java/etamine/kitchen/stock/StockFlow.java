package etamine.kitchen.stock;

import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What one item did in some time. Quantities are in its count unit. What is there is worth what its lots cost; what went
 * by a door without anybody saying from which lot, the average of all that was there in that time.
 *
 * @param item the item
 * @param opening what was there at the beginning, with opening stock that was entered since
 * @param closing what was there at the end
 * @param doors what came and went by each door, more than zero for what came; moves between places are none
 * @param whole false when something could not be brought to the count unit and is left out
 */
public record StockFlow(String item, Amount opening, Amount closing, Map<MovementKind, Amount> doors, boolean whole) {

    /** Copies the map. */
    public StockFlow {
        EnumMap<MovementKind, Amount> copy = new EnumMap<>(MovementKind.class);
        copy.putAll(doors);
        doors = Collections.unmodifiableMap(copy);
    }

    /**
     * So much of an item.
     *
     * @param quantity how much
     * @param value what it is worth, unrounded; empty when no cost and no price is known
     */
    public record Amount(Quantity quantity, Optional<Money> value) {

        /** Both together; the value is what is known of it. */
        public Amount plus(Amount other) {
            return new Amount(
                    quantity.plus(other.quantity),
                    value.isEmpty()
                            ? other.value
                            : value.map(known -> other.value.map(known::plus).orElse(known)));
        }

        /** The same the other way. */
        public Amount negate() {
            return new Amount(quantity.negate(), value.map(Money::negate));
        }
    }

    /** What came by a door, less than zero for what went; nothing for a door that was not used. */
    public Amount by(MovementKind door) {
        return Optional.ofNullable(doors.get(door))
                .orElseGet(() -> new Amount(
                        opening.quantity().times(Ratio.ZERO), opening.value().map(known -> known.times(Ratio.ZERO))));
    }
}
