package etamine.inventory.ui.internal;

import etamine.widgets.Choice;
import etamine.widgets.ChoiceField;
import etamine.widgets.Fonts;
import etamine.widgets.FormDialog;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** A heading that says what is counted, and the sheet. */
final class CountPage {
    private final Composite page;
    private final StockModel stock;
    private final CountModel model;
    private final CountSheet sheet;

    CountPage(Composite parent, StockModel stock, String place, Runnable changed) {
        this.stock = stock;
        model = new CountModel(stock, place);
        page = new Composite(parent, SWT.NONE);
        page.setLayout(new GridLayout(1, false));
        Label heading = new Label(page, SWT.NONE);
        heading.setFont(Fonts.bold(page));
        heading.setText(place.isEmpty() ? "Count everything" : "Count " + stock.placeName(place));
        Label hint = new Label(page, SWT.WRAP);
        hint.setText("Type what is there; Enter goes on. A number alone is in the unit shown. "
                + "Lines left empty are not counted.");
        hint.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        Composite below = new Composite(page, SWT.NONE);
        below.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        sheet = new CountSheet(below, model, changed);
    }

    Composite control() {
        return page;
    }

    CountModel model() {
        return model;
    }

    void focus(Optional<String> item) {
        sheet.focus(item);
    }

    /** Asks for an item that the ledger doesn't know of here, and adds its line. */
    void add(Shell parent) {
        AtomicReference<ChoiceField> field = new AtomicReference<>();
        AtomicReference<Choice> chosen = new AtomicReference<>();
        boolean accepted = new FormDialog(parent, "Add an item to the sheet", form -> {
                    field.set(form.choice("Item", "field:item", stock.itemChoices()));
                    field.get().required();
                })
                .button("Add")
                .onAccept(() -> chosen.set(field.get().value().orElseThrow()))
                .ask();
        if (accepted) {
            model.add(chosen.get().id(), chosen.get().label());
            sheet.show();
            sheet.focus(Optional.of(chosen.get().id()));
        }
    }
}
