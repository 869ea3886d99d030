package etamine.catalogue.ui.internal;

import etamine.kitchen.supply.Supplier;
import etamine.widgets.FormPane;
import etamine.widgets.SavedField;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** Everything about one supplier, each line saved when it is left. */
final class SupplierPane {
    private final FormPane form;
    private final Map<SupplierField, SavedField> fields = new EnumMap<>(SupplierField.class);
    private final Map<SupplierField, Text> texts = new EnumMap<>(SupplierField.class);

    /** Gets a line as typed; answers what is wrong with it, if anything. */
    @FunctionalInterface
    interface Saving {
        Optional<String> save(String supplier, SupplierField field, String typed);
    }

    SupplierPane(Composite parent, Saving saving) {
        form = new FormPane(parent);
        for (SupplierField field : SupplierField.values()) {
            String id = "field:" + field.name().toLowerCase(Locale.ROOT).replace('_', '-');
            Text text = form.text(field.label(), id);
            texts.put(field, text);
            fields.put(field, new SavedField(form, text, (about, typed) -> saving.save(about, field, typed)));
        }
        form.remark("Cut-offs run on the house's own clock.");
        empty();
    }

    void show(Supplier supplier) {
        fields.forEach((field, saved) -> saved.show(supplier.id(), SupplierText.of(supplier, field)));
        form.setVisible(true);
        form.reflow();
    }

    void empty() {
        form.setVisible(false);
    }

    void focus() {
        Text name = Optional.ofNullable(texts.get(SupplierField.NAME)).orElseThrow();
        name.setFocus();
        name.selectAll();
    }
}
