package etamine.inventory.ui.internal;

import etamine.inventory.Incoming;
import etamine.inventory.Outgoing;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import etamine.shell.Frame;
import etamine.widgets.Choice;
import etamine.widgets.ChoiceField;
import etamine.widgets.DayField;
import etamine.widgets.FormDialog;
import etamine.widgets.MoneyField;
import etamine.widgets.NumberField;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.eclipse.swt.widgets.Text;

/** Asks for what is moved; answers the work to do, or nothing when the dialog is left. */
final class StockDialogs {
    private final Frame frame;
    private final StockModel model;
    private final OrderModel orders;

    StockDialogs(Frame frame, StockModel model, OrderModel orders) {
        this.frame = frame;
        this.model = model;
        this.orders = orders;
    }

    /**
     * Something to do in the background.
     *
     * @param label what is being done
     * @param run does it and answers a sentence
     */
    record Job(String label, Supplier<String> run) {}

    /** Takes something out. */
    Optional<Job> take(Optional<String> item, MovementKind usual) {
        AtomicReference<Supplier<Outgoing>> typed = new AtomicReference<>();
        AtomicReference<ChoiceField> door = new AtomicReference<>();
        AtomicReference<Outgoing> answer = new AtomicReference<>();
        AtomicReference<MovementKind> kind = new AtomicReference<>(usual);
        boolean accepted = new FormDialog(frame.window(), "Take out", form -> {
                    ChoiceField what = form.choice("Item", "field:item", model.itemChoices());
                    what.required();
                    item.ifPresent(what::choose);
                    Text quantity = form.text("Quantity", "field:quantity");
                    quantity.setMessage("0.5 l");
                    item.ifPresent(given -> quantity.getDisplay().asyncExec(quantity::setFocus));
                    door.set(form.choice("As", "field:kind", StockModel.doors()));
                    door.get().choose(usual.name());
                    ChoiceField place =
                            form.choice("From (empty: first to expire)", "field:place", model.placeChoices());
                    Text reason = form.text("Reason", "field:reason");
                    typed.set(() -> new Outgoing(
                            what.id().orElse(""),
                            model.quantity(what.id().orElse(""), quantity.getText()),
                            place.id(),
                            reason.getText().strip()));
                })
                .button("Take out")
                .check(() -> problem(() -> typed.get().get()))
                .onAccept(() -> {
                    answer.set(typed.get().get());
                    door.get().id().map(MovementKind::valueOf).ifPresent(kind::set);
                })
                .ask();
        return accepted
                ? Optional.of(new Job("Taking out", () -> {
                    model.room().take(kind.get(), answer.get());
                    return model.taken(answer.get().quantity(), answer.get().item());
                }))
                : Optional.empty();
    }

    /** Receives goods without an order, or enters opening stock. */
    Optional<Job> receive(Optional<String> item) {
        AtomicReference<Supplier<Incoming>> typed = new AtomicReference<>();
        AtomicReference<Incoming> answer = new AtomicReference<>();
        boolean accepted = new FormDialog(frame.window(), "Receive goods", form -> {
                    ChoiceField what = form.choice("Item", "field:item", model.itemChoices());
                    what.required();
                    item.ifPresent(what::choose);
                    Text quantity = form.text("Quantity", "field:quantity");
                    quantity.setMessage("6 x 1 l");
                    item.ifPresent(given -> quantity.getDisplay().asyncExec(quantity::setFocus));
                    MoneyField paid = form.field(
                            "Paid for all of it",
                            "field:paid",
                            false,
                            parent -> new MoneyField(parent, model.currency()));
                    DayField useBy = form.day("Use by, as marked", "field:use-by", model::today);
                    ChoiceField place =
                            form.choice("To (empty: where it usually is)", "field:place", model.placeChoices());
                    Text lot = form.text("Mark on it", "field:lot");
                    typed.set(() -> {
                        Quantity amount = model.quantity(what.id().orElse(""), quantity.getText());
                        Optional<UnitPrice> cost = paid.value().map(money -> new UnitPrice(money.amount(), amount));
                        return new Incoming(
                                what.id().orElse(""),
                                place.id().orElse(""),
                                amount,
                                useBy.value(),
                                cost,
                                lot.getText().strip());
                    });
                })
                .button("Receive")
                .check(() -> problem(() -> typed.get().get()))
                .onAccept(() -> answer.set(typed.get().get()))
                .ask();
        return accepted
                ? Optional.of(new Job("Receiving", () -> {
                    model.room().receive("", List.of(answer.get()));
                    return answer.get().quantity() + " received.";
                }))
                : Optional.empty();
    }

    /** Receives an order, asking which one and what did not come. */
    Optional<Job> receiveOrder() {
        List<Choice> awaited = orders.awaited();
        if (awaited.isEmpty()) {
            frame.say("No order is awaited; receive goods without one.");
            return Optional.empty();
        }
        AtomicReference<ChoiceField> field = new AtomicReference<>();
        AtomicReference<String> order = new AtomicReference<>("");
        boolean chosen = new FormDialog(frame.window(), "Receive an order", form -> {
                    field.set(form.choice("Order", "field:order", awaited));
                    field.get().required();
                    field.get().choose(awaited.get(0).id());
                })
                .button("Check it off")
                .onAccept(() -> order.set(field.get().id().orElse("")))
                .ask();
        return chosen ? checkOff(order.get()) : Optional.empty();
    }

    private Optional<Job> checkOff(String order) {
        Map<String, NumberField> fields = new LinkedHashMap<>();
        Map<String, Long> missing = new LinkedHashMap<>();
        boolean accepted = new FormDialog(frame.window(), "Order " + order + ": packs that did not come", form -> {
                    form.remark("Leave a line empty when everything on it came.");
                    orders.lines(order)
                            .forEach(line -> fields.put(
                                    line.item(),
                                    form.number(
                                            line.label(),
                                            "short:" + line.item(),
                                            parent -> new NumberField(parent, "0", String.valueOf(line.packs()), 0))));
                })
                .button("Receive")
                .onAccept(() -> fields.forEach((item, packs) -> missing.put(item, (long) packs.whole())))
                .ask();
        return accepted
                ? Optional.of(new Job("Receiving order " + order, () -> {
                    int lots = orders.receive(order, missing, Optional.empty());
                    return "Order " + order + " received: " + lots + (lots == 1 ? " lot." : " lots.");
                }))
                : Optional.empty();
    }

    /** Moves something to another place. */
    Optional<Job> move(String item, String name) {
        AtomicReference<Supplier<Runnable>> typed = new AtomicReference<>();
        AtomicReference<Runnable> answer = new AtomicReference<>();
        boolean accepted = new FormDialog(frame.window(), "Move " + name, form -> {
                    Text quantity = form.text("Quantity", "field:quantity");
                    ChoiceField from = form.choice("From", "field:from", model.placeChoices());
                    ChoiceField to = form.choice("To", "field:to", model.placeChoices());
                    from.required();
                    to.required();
                    typed.set(() -> {
                        Quantity amount = model.quantity(item, quantity.getText());
                        String source = from.id().orElse("");
                        String target = to.id().orElse("");
                        return () -> model.room().move(item, amount, source, target);
                    });
                })
                .button("Move")
                .check(() -> problem(() -> typed.get().get()))
                .onAccept(() -> answer.set(typed.get().get()))
                .ask();
        return accepted
                ? Optional.of(new Job("Moving " + name, () -> {
                    answer.get().run();
                    return name + " moved.";
                }))
                : Optional.empty();
    }

    private static Optional<String> problem(Supplier<?> typed) {
        try {
            typed.get();
            return Optional.empty();
        } catch (IllegalArgumentException unreadable) {
            return Optional.of(String.valueOf(unreadable.getMessage()));
        }
    }
}
