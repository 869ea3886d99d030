package etamine.catalogue.ui.internal;

import etamine.base.Subject;
import etamine.kitchen.supply.Supplier;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import etamine.widgets.Prompt;
import etamine.widgets.Tone;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Suppliers above; below them the facts of the selected one and what it offers. */
final class SuppliersBench implements Bench {
    private static final Comparator<LocalDate> EARLIEST = Comparator.naturalOrder();

    private final Frame frame;
    private final SuppliersModel model;
    private final ListTable<SupplierRow> suppliers;
    private final SupplierPane pane;
    private final ListTable<OfferRow> offers;

    SuppliersBench(Composite parent, Frame frame, SuppliersModel model) {
        this.frame = frame;
        this.model = model;
        SashForm sash = new SashForm(parent, SWT.VERTICAL);
        suppliers = new ListTable<>(sash, "table:suppliers", SupplierRow::id, supplierColumns())
                .whenEmpty("No suppliers yet.", "Add the first supplier", this::addSupplier)
                .onSelect(rows -> selected())
                .onOpen(row -> focusForm())
                .onDelete(rows -> removeSupplier());
        SashForm lower = new SashForm(sash, SWT.HORIZONTAL);
        pane = new SupplierPane(lower, this::saveField);
        offers = new ListTable<>(lower, "table:offers", OfferRow::id, offerColumns())
                .findable("Find an offer")
                .whenEmpty("No offers of this supplier yet.", "Add the first offer", this::addOffer)
                .onSelect(rows -> offerSelected())
                .onOpen(row -> changeOffer())
                .onDelete(rows -> removeOffer());
        lower.setWeights(29, 71);
        sash.setWeights(34, 66);
        refresh();
    }

    private static List<Column<SupplierRow>> supplierColumns() {
        Comparator<SupplierRow> byDay = Comparator.comparing(row -> row.next().orElse(LocalDate.MAX), EARLIEST);
        return List.of(
                Column.words("Supplier", 5, SupplierRow::name),
                Column.words("Delivers", 3, SupplierRow::days),
                Column.words("Next delivery", 3, SupplierRow::nextText)
                        .sorted(byDay)
                        .withTone(row -> row.next().isPresent() ? Tone.PLAIN : Tone.WARN),
                Column.words("Order by", 3, SupplierRow::closing).sorted(byDay),
                Column.figures("Minimum", 2, SupplierRow::minimum, Comparator.comparing(SupplierRow::minimum)),
                Column.figures("Fee", 2, SupplierRow::fee, Comparator.comparing(SupplierRow::fee)),
                Column.figures(
                        "Offers", 2, row -> String.valueOf(row.offers()), Comparator.comparing(SupplierRow::offers)));
    }

    private static List<Column<OfferRow>> offerColumns() {
        return List.of(
                Column.words("Item", 5, OfferRow::item)
                        .withIcon(row -> row.doubtful() ? "warning" : "")
                        .withTone(SuppliersBench::tone),
                Column.words("Number", 2, OfferRow::code).withTone(SuppliersBench::tone),
                Column.words("Pack", 3, OfferRow::pack).withTone(SuppliersBench::tone),
                Column.figures("Price", 3, OfferRow::price, Comparator.comparing(OfferRow::sortBy))
                        .withTone(SuppliersBench::tone),
                Column.figures("Per unit", 3, OfferRow::unitPrice, Comparator.comparing(OfferRow::sortBy))
                        .withTone(SuppliersBench::tone),
                Column.words("Price from", 4, OfferRow::from).withTone(SuppliersBench::tone));
    }

    /** A price that doesn't hold today stands back; the column beside it says so in words. */
    private static Tone tone(OfferRow row) {
        return row.current() ? Tone.PLAIN : Tone.QUIET;
    }

    private Optional<String> supplier() {
        return suppliers.selected().map(SupplierRow::id);
    }

    private void selected() {
        Optional<Supplier> supplier = supplier().flatMap(model::supplier);
        supplier.ifPresentOrElse(pane::show, pane::empty);
        offers.setVisible(supplier.isPresent());
        offers.setRows(supplier.map(known -> model.offers(known.id())).orElse(List.of()));
        offerSelected();
    }

    private void offerSelected() {
        offers.selected()
                .flatMap(row -> model.explain(row.id()))
                .ifPresentOrElse(frame::explain, frame::explainNothing);
        frame.actionsChanged();
    }

    private void focusForm() {
        if (supplier().isPresent()) {
            pane.focus();
        }
    }

    private Optional<String> saveField(String about, SupplierField field, String typed) {
        Optional<String> problem = model.problem(about, field, typed);
        if (problem.isEmpty()) {
            change("Saving supplier", () -> model.save(about, field, typed));
        }
        return problem;
    }

    private void change(String label, Runnable work) {
        frame.work(
                label,
                progress -> {
                    work.run();
                    return label;
                },
                done -> refresh());
    }

    private void addSupplier() {
        Prompt.line(
                        frame.window(),
                        "Add a supplier",
                        "Name",
                        "",
                        name -> name.isEmpty() ? Optional.of("Give the supplier a name.") : Optional.empty())
                .ifPresent(name -> frame.work("Adding " + name, progress -> model.add(name), id -> {
                    refresh();
                    suppliers.select(id);
                    focusForm();
                }));
    }

    private void removeSupplier() {
        suppliers.selected().ifPresent(row -> {
            String sentence = "Its " + row.offers() + " offers go with it. Undo brings them back.";
            if (row.offers() == 0 || Prompt.confirm(frame.window(), "Remove " + row.name(), sentence, "Remove")) {
                change("Removing " + row.name(), () -> model.removeSupplier(row.id()));
            }
        });
    }

    private void addOffer() {
        supplier()
                .ifPresent(id -> new OfferDialog(model, id, "")
                        .ask(frame.window(), OfferDraft.empty())
                        .ifPresent(draft -> save(id, draft, "", 0)));
    }

    private void changeOffer() {
        String formerId = offers.selected().map(OfferRow::id).orElse("");
        long read = model.revision(formerId);
        model.offer(formerId).ifPresent(offer -> {
            new OfferDialog(model, offer.supplier(), formerId)
                    .ask(frame.window(), OfferDraft.of(offer))
                    .ifPresent(draft -> save(offer.supplier(), draft, formerId, read));
        });
    }

    /** Another price of the same article beside those there are. */
    private void newPrice() {
        offers.selected()
                .flatMap(row -> model.offer(row.id()))
                .ifPresent(offer -> new OfferDialog(model, offer.supplier(), "")
                        .ask(frame.window(), OfferDraft.of(offer).from(model.today()))
                        .ifPresent(draft -> save(offer.supplier(), draft, "", 0)));
    }

    private void save(String supplier, OfferDraft draft, String formerId, long read) {
        frame.work("Saving offer", progress -> model.save(supplier, draft, formerId, read), saved -> {
            refresh();
            offers.select(saved.id());
            saved.doubts().stream().findFirst().ifPresent(frame::warn);
        });
    }

    private void removeOffer() {
        offers.selected().ifPresent(row -> change("Removing offer", () -> model.removeOffer(row.id())));
    }

    @Override
    public List<BenchAction> actions() {
        return List.of(
                BenchAction.of("add-supplier", "Add supplier", "add", this::addSupplier)
                        .onKey(SWT.MOD1 | 'N'),
                BenchAction.of("add-offer", "Add offer", "new", this::addOffer)
                        .onKey(SWT.MOD1 | SWT.MOD2 | 'N')
                        .when(() -> supplier().isPresent()),
                BenchAction.of("change-offer", "Change offer", "edit", this::changeOffer)
                        .when(() -> offers.selected().isPresent()),
                BenchAction.of("new-price", "New price", "price", this::newPrice)
                        .when(() -> offers.selected().isPresent()),
                BenchAction.of("remove-offer", "Remove offer", "remove", this::removeOffer)
                        .when(() -> offers.selected().isPresent()),
                BenchAction.of("remove-supplier", "Remove supplier", "remove", this::removeSupplier)
                        .when(() -> supplier().isPresent()));
    }

    @Override
    public void refresh() {
        suppliers.setRows(model.rows());
        if (supplier().isEmpty() && !suppliers.shown().isEmpty()) {
            suppliers.select(suppliers.shown().get(0).id());
        }
        selected();
    }

    @Override
    public void show(Subject subject) {
        if (subject.kind().equals("offer")) {
            model.offer(subject.id()).ifPresent(offer -> {
                suppliers.select(offer.supplier());
                selected();
                offers.select(subject.id());
            });
        } else {
            suppliers.select(subject.id());
        }
    }

    @Override
    public void focus() {
        suppliers.setFocus();
    }
}
