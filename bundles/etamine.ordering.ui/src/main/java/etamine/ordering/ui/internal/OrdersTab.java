package etamine.ordering.ui.internal;

import etamine.kitchen.order.OrderState;
import etamine.shell.Frame;
import etamine.widgets.ChoiceField;
import etamine.widgets.Column;
import etamine.widgets.FormDialog;
import etamine.widgets.ListTable;
import etamine.widgets.NumberField;
import etamine.widgets.Prompt;
import etamine.widgets.Tone;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/** The orders above, the lines of the selected one below. Plus and minus change packs, Delete takes a line off. */
final class OrdersTab {
    private final Frame frame;
    private final OrdersModel model;
    private final SashForm sash;
    private final ListTable<OrderRow> list;
    private final ListTable<LineRow> lines;

    OrdersTab(Composite parent, Frame frame, OrdersModel model, Runnable plan) {
        this.frame = frame;
        this.model = model;
        sash = new SashForm(parent, SWT.VERTICAL);
        list = new ListTable<>(sash, "table:orders", OrderRow::id, orderColumns())
                .whenEmpty("Nothing is drafted or ordered.", "Plan the coming week", plan)
                .onSelect(rows -> selected());
        lines = new ListTable<>(sash, "table:order-lines", LineRow::key, lineColumns())
                .whenEmpty("Select an order to see its lines.")
                .onSelect(rows -> explainLine())
                .onOpen(this::askPacks)
                .onDelete(rows -> rows.forEach(row -> setPacks(row, 0)));
        lines.control().addListener(SWT.KeyDown, this::key);
        sash.setWeights(40, 60);
    }

    private static List<Column<OrderRow>> orderColumns() {
        return List.of(
                Column.words("Supplier", 5, OrderRow::supplier),
                Column.words("Delivery", 2, OrderRow::deliver).sorted(Comparator.comparing(OrderRow::order)),
                Column.words("Closes in", 3, OrderRow::closes)
                        .withIcon(row -> row.urgent() ? "warning" : "")
                        .withTone(row -> row.urgent() ? Tone.WARN : Tone.PLAIN),
                Column.words("State", 2, OrderRow::stateText)
                        .withTone(row -> row.state() == OrderState.DRAFT ? Tone.PLAIN : Tone.QUIET),
                Column.figures("Lines", 1, OrderRow::linesText, Comparator.comparing(OrderRow::lines)),
                Column.figures("Goods", 2, OrderRow::goods, comparing(OrderRow::goods)),
                Column.figures("Fee", 2, OrderRow::fee, comparing(OrderRow::fee)),
                Column.words("Number", 3, OrderRow::id));
    }

    private static List<Column<LineRow>> lineColumns() {
        return List.of(
                Column.words("Ingredient", 4, LineRow::name),
                Column.words("Article", 2, LineRow::code),
                Column.figures("Packs", 1, LineRow::packsText, Comparator.comparing(LineRow::packs)),
                Column.words("Pack", 2, LineRow::pack),
                Column.figures("Price", 2, LineRow::price, comparing(LineRow::price)),
                Column.figures("Amount", 2, LineRow::amount, comparing(LineRow::amount)),
                Column.words("Why", 8, LineRow::why));
    }

    /** By the amount that a text says. */
    private static <T> Comparator<T> comparing(Function<T, String> amount) {
        return Comparator.comparing(row -> new BigDecimal(amount.apply(row)));
    }

    Control control() {
        return sash;
    }

    private void selected() {
        Optional<OrderRow> row = list.selected();
        lines.setRows(row.map(order -> model.lines(order.id())).orElse(List.of()));
        row.flatMap(order -> model.explain(order.id())).ifPresentOrElse(frame::explain, frame::explainNothing);
        frame.actionsChanged();
    }

    private void explainLine() {
        lines.selected().map(model::explain).ifPresent(frame::explain);
        frame.actionsChanged();
    }

    private void key(Event event) {
        boolean more = event.character == '+' || event.keyCode == SWT.KEYPAD_ADD;
        boolean less = event.character == '-' || event.keyCode == SWT.KEYPAD_SUBTRACT;
        if (more || less) {
            lines.selected().ifPresent(row -> setPacks(row, row.packs() + (more ? 1 : -1)));
            event.doit = false;
        }
    }

    private void askPacks(LineRow row) {
        if (isDraftSelected()) {
            Prompt.line(frame.window(), row.name(), "Packs of " + row.pack(), row.packsText(), OrdersTab::packsProblem)
                    .ifPresent(text -> setPacks(row, Long.parseLong(text)));
        }
    }

    private static Optional<String> packsProblem(String text) {
        return text.matches("[0-9]{1,6}") ? Optional.empty() : Optional.of("Write a whole number of packs.");
    }

    private void setPacks(LineRow row, long packs) {
        if (!model.isDraft(row.order())) {
            frame.warn("Only a draft can be changed.");
            return;
        }
        frame.work(
                "Changing packs",
                progress -> {
                    model.setPacks(row, packs);
                    return row.key();
                },
                key -> {
                    refresh();
                    lines.select(key);
                });
    }

    void addLine() {
        list.selected().ifPresent(order -> {
            AddedLine added = new AddedLine();
            new FormDialog(frame.window(), "Add to the order for " + order.supplier(), form -> {
                        added.offer = Optional.of(form.choice("Article", "line:offer", model.offers(order.id())));
                        added.packs = Optional.of(
                                form.number("Packs", "line:packs", cell -> new NumberField(cell, "1", "100000", 0)));
                    })
                    .button("Add")
                    .check(added::problem)
                    .onAccept(() -> add(order.id(), added))
                    .ask();
        });
    }

    private void add(String order, AddedLine added) {
        String offer = added.offer.flatMap(ChoiceField::id).orElse("");
        int packs = added.packs.map(NumberField::whole).orElse(1);
        frame.work(
                "Adding a line",
                progress -> {
                    model.add(order, offer, packs);
                    return offer;
                },
                done -> {
                    refresh();
                    lines.select(done);
                });
    }

    private static final class AddedLine {
        Optional<ChoiceField> offer = Optional.empty();
        Optional<NumberField> packs = Optional.empty();

        Optional<String> problem() {
            if (offer.flatMap(ChoiceField::id).isEmpty()) {
                return Optional.of("Choose an article.");
            }
            return packs.flatMap(NumberField::value).isEmpty()
                    ? Optional.of("Write how many packs.")
                    : Optional.empty();
        }
    }

    void drop() {
        list.selected().ifPresent(row -> {
            boolean sent = model.isSent(row.id());
            frame.work(
                    sent ? "Calling off" : "Dropping the draft",
                    progress -> {
                        if (sent) {
                            model.cancel(row.id());
                        } else {
                            model.discard(row.id());
                        }
                        return row.id();
                    },
                    id -> {
                        frame.say(id + (sent ? " is noted as called off." : " is dropped; undo brings it back."));
                        refresh();
                    });
        });
    }

    /** The drafts among the selected orders; all drafts when no draft is selected. */
    List<String> toIssue() {
        List<String> chosen = list.selection().stream()
                .filter(row -> row.state() == OrderState.DRAFT)
                .map(OrderRow::id)
                .toList();
        return chosen.isEmpty() ? model.drafts() : chosen;
    }

    boolean isDraftSelected() {
        return list.selected().map(row -> row.state() == OrderState.DRAFT).orElse(false);
    }

    boolean canDrop() {
        return list.selected()
                .map(row -> model.isDraft(row.id()) || model.isSent(row.id()))
                .orElse(false);
    }

    void refresh() {
        Optional<LineRow> line = lines.selected();
        list.setRows(model.rows());
        selected();
        line.ifPresent(before -> explainLine());
    }

    void select(String id) {
        list.select(id);
    }

    void focus() {
        list.setFocus();
    }
}
