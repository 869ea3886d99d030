package etamine.ordering.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.par.Par;
import etamine.measures.Conversion;
import etamine.measures.Quantity;
import java.time.DayOfWeek;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Two pars of what was held for two things: what should be there for both.
 *
 * @param item what both are pars of
 */
record JoinedPars(Item item) {

    Par of(Par one, Par other) {
        Set<DayOfWeek> days = new TreeSet<>(one.weekdays().keySet());
        days.addAll(other.weekdays().keySet());
        Map<DayOfWeek, Quantity> weekdays = new EnumMap<>(DayOfWeek.class);
        days.forEach(day -> weekdays.put(day, sum(one.on(day), other.on(day))));
        return new Par(
                item.id(),
                sum(one.par(), other.par()),
                weekdays,
                sum(one.orderAt(), other.orderAt()),
                sum(one.capacity(), other.capacity()));
    }

    private Optional<Quantity> sum(Optional<Quantity> one, Optional<Quantity> other) {
        return one.isPresent() && other.isPresent() ? Optional.of(sum(one.get(), other.get())) : one.or(() -> other);
    }

    private Quantity sum(Quantity one, Quantity other) {
        Conversion same = item.converter().convert(other, one.unit());
        if (same instanceof Conversion.Missing missing) {
            throw new IllegalArgumentException("The pars of both cannot be added. " + missing.text() + " Write it on "
                    + item.name() + ", or take one of the pars away, then merge again.");
        }
        return one.plus(same.orThrow());
    }
}
