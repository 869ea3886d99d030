package etamine.inventory.ui.internal;

import etamine.base.Subject;
import etamine.kitchen.stock.MovementKind;
import etamine.kitchen.stock.Place;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Prompt;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;

/** The stock, or while somebody counts, the sheet to count on. */
final class StockBench implements Bench {
    private final Frame frame;
    private final StockModel model;
    private final StockDialogs dialogs;
    private final Composite pages;
    private final StackLayout stack = new StackLayout();
    private final StockPage page;
    private Optional<CountPage> counting = Optional.empty();

    StockBench(Composite parent, Frame frame, StockModel model, OrderModel orders) {
        this.frame = frame;
        this.model = model;
        this.dialogs = new StockDialogs(frame, model, orders);
        pages = new Composite(parent, SWT.NONE);
        pages.setLayout(stack);
        page = new StockPage(pages, frame, model, this::receive);
        stack.topControl = page.control();
        refresh();
    }

    private void count() {
        CountPage sheet = new CountPage(pages, model, page.place().orElseGet(this::firstPlace), frame::actionsChanged);
        counting = Optional.of(sheet);
        show(sheet.control());
        sheet.focus(page.selected().map(StockRow::item));
    }

    private String firstPlace() {
        return model.places().stream().findFirst().map(Place::id).orElse("");
    }

    private void show(Composite top) {
        stack.topControl = top;
        pages.layout();
        frame.actionsChanged();
    }

    private void finishCount() {
        counting.ifPresent(sheet -> {
            List<String> faulty = sheet.model().faulty();
            if (!faulty.isEmpty()) {
                frame.warn("A line cannot be read; correct it or empty it.");
                sheet.focus(Optional.of(faulty.get(0)));
                return;
            }
            frame.work("Saving the count", progress -> sheet.model().finish(), differences -> {
                frame.say(
                        differences == 0
                                ? "Everything counted is as the ledger says."
                                : differences + (differences == 1 ? " difference" : " differences") + " written.");
                leaveCount();
            });
        });
    }

    private void leaveCount() {
        show(page.control());
        counting.ifPresent(sheet -> sheet.control().dispose());
        counting = Optional.empty();
        refresh();
        page.focus();
    }

    private void dropCount() {
        long counted = counting.map(sheet -> sheet.model().counted()).orElse(0L);
        if (counted == 0
                || Prompt.confirm(frame.window(), "Leave the count", "What was typed is not kept.", "Leave it")) {
            leaveCount();
        }
    }

    private void run(Optional<StockDialogs.Job> job) {
        job.ifPresent(known -> frame.work(known.label(), progress -> known.run().get(), sentence -> {
            frame.say(sentence);
            refresh();
        }));
    }

    private void receive() {
        run(dialogs.receive(page.selected().map(StockRow::item)));
    }

    private void waste() {
        run(dialogs.take(page.selected().map(StockRow::item), MovementKind.WASTED));
    }

    private void move() {
        page.selected().ifPresent(row -> run(dialogs.move(row.item(), row.name())));
    }

    private void takeBack() {
        page.movement()
                .ifPresent(movement -> frame.work(
                        "Taking back",
                        progress -> {
                            model.takeBack(movement.id());
                            return movement;
                        },
                        done -> refresh()));
    }

    private void places() {
        new PlaceDialog(new PlacesModel(model)).open(frame.window());
        refresh();
    }

    @Override
    public List<BenchAction> actions() {
        if (counting.isPresent()) {
            return List.of(
                    BenchAction.of("finish-count", "Save the count", "check", this::finishCount)
                            .onKey(SWT.MOD1 | SWT.CR)
                            .when(() -> counting.filter(sheet -> sheet.model().counted() > 0)
                                    .isPresent()),
                    BenchAction.of("add-to-count", "Add an item to the sheet", "add", this::addToCount),
                    BenchAction.of("leave-count", "Leave without saving", "close", this::dropCount));
        }
        return List.of(
                BenchAction.of("count", "Count", "count", this::count).onKey(SWT.MOD1 | 'K'),
                BenchAction.of("receive-order", "Receive order", "delivery", () -> run(dialogs.receiveOrder())),
                BenchAction.of("receive", "Receive goods", "receive", this::receive)
                        .onKey(SWT.MOD1 | 'N'),
                BenchAction.of("take", "Waste", "waste", this::waste).onKey(SWT.MOD1 | 'W'),
                BenchAction.of("move", "Move", "move", this::move)
                        .when(() ->
                                page.selected().isPresent() && model.places().size() > 1),
                BenchAction.of("take-back", "Take back", "undo", this::takeBack)
                        .when(() ->
                                page.movement().filter(MovementRow::standing).isPresent()),
                BenchAction.of("places", "Places", "house", this::places));
    }

    private void addToCount() {
        counting.ifPresent(sheet -> sheet.add(frame.window()));
    }

    @Override
    public void refresh() {
        page.refresh();
        frame.actionsChanged();
    }

    @Override
    public void show(Subject subject) {
        page.select(subject.id());
    }

    @Override
    public void focus() {
        counting.ifPresentOrElse(sheet -> sheet.focus(Optional.empty()), page::focus);
    }
}
