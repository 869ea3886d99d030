package etamine.ordering.ui.internal;

import etamine.kitchen.par.Par;
import java.time.DayOfWeek;
import java.util.Optional;

/**
 * A par in the list.
 *
 * @param name the item's name
 * @param par the par
 */
record ParRow(String name, Par par) {

    String item() {
        return par.item();
    }

    String level() {
        return par.par().toString();
    }

    String on(DayOfWeek day) {
        return Optional.ofNullable(par.weekdays().get(day)).map(Object::toString).orElse("");
    }

    String orderAt() {
        return par.orderAt().map(Object::toString).orElse("");
    }

    String capacity() {
        return par.capacity().map(Object::toString).orElse("");
    }
}
