package etamine.catalogue.ui.internal;

import etamine.widgets.ChoiceField;
import etamine.widgets.DayField;
import etamine.widgets.FormDialog;
import etamine.widgets.FormPane;
import java.util.Optional;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.jspecify.annotations.Nullable;

/** Asks for an offer. */
final class OfferDialog {
    private final SuppliersModel model;
    private final String supplier;
    private final String formerId;
    private @Nullable Form form;

    private record Form(
            ChoiceField item, Text code, Text gtin, Text pack, Text price, Text breaks, Text keeps, DayField from) {

        OfferDraft draft() {
            return new OfferDraft(
                    item.id().orElse(""),
                    code.getText(),
                    gtin.getText(),
                    pack.getText(),
                    price.getText(),
                    breaks.getText(),
                    keeps.getText(),
                    from.value());
        }
    }

    OfferDialog(SuppliersModel model, String supplier, String formerId) {
        this.model = model;
        this.supplier = supplier;
        this.formerId = formerId;
    }

    /** Asks, starting from a draft; empty when the dialog is left. */
    Optional<OfferDraft> ask(Shell parent, OfferDraft start) {
        OfferDraft[] answer = new OfferDraft[1];
        boolean accepted = new FormDialog(
                        parent,
                        formerId.isEmpty() ? "Add an offer" : "Change an offer",
                        pane -> form = fill(pane, start))
                .button(formerId.isEmpty() ? "Add" : "Save")
                .check(() -> model.problem(supplier, typed(), formerId))
                .onAccept(() -> answer[0] = typed())
                .ask();
        return accepted ? Optional.of(answer[0]) : Optional.empty();
    }

    private OfferDraft typed() {
        Form filled = form;
        return filled == null ? OfferDraft.empty() : filled.draft();
    }

    private Form fill(FormPane pane, OfferDraft start) {
        ChoiceField item = pane.choice("Item", "field:offer-item", model.itemChoices());
        Form filled = new Form(
                item,
                line(pane, "Article number", "field:offer-code", start.code(), "D-104"),
                line(pane, "GS1 number", "field:offer-gtin", start.gtin(), ""),
                line(pane, "Pack", "field:offer-pack", start.pack(), "6 x 1 l"),
                line(pane, "Price a pack, or by weight", "field:offer-price", start.price(), "24.60 or 7.80 / kg"),
                line(pane, "Lower from packs on", "field:offer-breaks", start.breaks(), "5: 22.90, 10: 21.00"),
                line(pane, "Keeps from delivery, days", "field:offer-keeps", start.keeps(), "9"),
                pane.day("Holds from", "field:offer-from", model::today));
        item.required();
        item.choose(start.item());
        filled.from().set(start.from());
        return filled;
    }

    private static Text line(FormPane pane, String label, String id, String value, String hint) {
        Text text = pane.text(label, id);
        text.setText(value);
        text.setMessage(hint);
        return text;
    }
}
