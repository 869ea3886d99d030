package etamine.ordering.ui.internal;

import etamine.kitchen.par.Par;
import etamine.measures.Quantity;
import java.time.DayOfWeek;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;

/**
 * A par in the list.
 *
 * @param name the item's name
 * @param par the par
 */
record ParRow(String name, Par par) {

    /** Orders rows by one of their levels: weights, then volumes, then pieces, each by size; none at the end. */
    static Comparator<ParRow> by(Function<ParRow, Optional<Quantity>> level) {
        Comparator<Quantity> size = Comparator.comparing(
                        (Quantity quantity) -> quantity.unit().dimension())
                .thenComparing(
                        quantity -> quantity.amount().times(quantity.unit().inBase()));
        return Comparator.comparing(row -> level.apply(row).orElse(null), Comparator.nullsLast(size));
    }

    Optional<Quantity> levelOn(DayOfWeek day) {
        return Optional.ofNullable(par.weekdays().get(day));
    }

    String item() {
        return par.item();
    }

    String level() {
        return par.par().toString();
    }

    String on(DayOfWeek day) {
        return levelOn(day).map(Object::toString).orElse("");
    }

    String orderAt() {
        return par.orderAt().map(Object::toString).orElse("");
    }

    String capacity() {
        return par.capacity().map(Object::toString).orElse("");
    }
}
