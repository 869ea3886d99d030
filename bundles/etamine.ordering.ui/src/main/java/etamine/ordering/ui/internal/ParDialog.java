package etamine.ordering.ui.internal;

import etamine.kitchen.par.Par;
import etamine.measures.Quantity;
import etamine.widgets.ChoiceField;
import etamine.widgets.FormDialog;
import etamine.widgets.FormPane;
import etamine.widgets.QuantityField;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks for a par with its weekday levels, order point and room. */
final class ParDialog {
    private final ParsModel model;
    private final Optional<Par> before;
    private final Map<DayOfWeek, QuantityField> weekdays = new EnumMap<>(DayOfWeek.class);
    private Optional<ChoiceField> choice = Optional.empty();
    private Optional<Text> id = Optional.empty();
    private Optional<QuantityField> level = Optional.empty();
    private Optional<QuantityField> orderAt = Optional.empty();
    private Optional<QuantityField> capacity = Optional.empty();
    private Optional<Par> accepted = Optional.empty();

    ParDialog(ParsModel model, Optional<Par> before) {
        this.model = model;
        this.before = before;
    }

    /** The par that was accepted. */
    Optional<Par> ask(Shell parent) {
        String title = before.map(par -> "Par of " + model.around().itemName(par.item()))
                .orElse("Add a par");
        new FormDialog(parent, title, this::fill)
                .button("Save")
                .check(this::problem)
                .onAccept(() -> accepted = entered())
                .ask();
        return accepted;
    }

    private void fill(FormPane form) {
        if (before.isEmpty()) {
            fillItem(form);
        }
        level = Optional.of(form.quantity("Par", "par:level"));
        orderAt = Optional.of(form.quantity("Order only when down to", "par:orderAt"));
        capacity = Optional.of(form.quantity("Room for at most", "par:capacity"));
        form.heading("On single weekdays");
        for (DayOfWeek day : DayOfWeek.values()) {
            String name = day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
            weekdays.put(day, form.quantity(name, "par:" + day.name().toLowerCase(Locale.ROOT)));
        }
        before.ifPresent(this::show);
    }

    private void fillItem(FormPane form) {
        if (model.around().itemChoices().isEmpty()) {
            id = Optional.of(form.text("Ingredient", "par:item"));
        } else {
            choice = Optional.of(
                    form.choice("Ingredient", "par:item", model.around().itemChoices()));
        }
    }

    private void show(Par par) {
        level.ifPresent(field -> field.set(par.par()));
        orderAt.ifPresent(field -> field.set(par.orderAt()));
        capacity.ifPresent(field -> field.set(par.capacity()));
        weekdays.forEach(
                (day, field) -> field.set(Optional.ofNullable(par.weekdays().get(day))));
    }

    private Optional<String> problem() {
        if (item().isEmpty()) {
            return Optional.of("Choose the ingredient.");
        }
        return entered().map(model::problem).orElseGet(() -> Optional.of("Write the par, such as 8 l."));
    }

    private Optional<String> item() {
        return before.map(Par::item)
                .or(() -> choice.flatMap(ChoiceField::id))
                .or(() -> id.map(Text::getText).map(String::strip).filter(text -> !text.isEmpty()));
    }

    private Optional<Par> entered() {
        Map<DayOfWeek, Quantity> levels = new EnumMap<>(DayOfWeek.class);
        weekdays.forEach((day, field) -> field.value().ifPresent(quantity -> levels.put(day, quantity)));
        return item().flatMap(
                        item -> value(level).map(par -> new Par(item, par, levels, value(orderAt), value(capacity))));
    }

    private static Optional<Quantity> value(Optional<QuantityField> field) {
        return field.flatMap(QuantityField::value);
    }
}
