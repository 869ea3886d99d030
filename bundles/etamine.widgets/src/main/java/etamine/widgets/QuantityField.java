package etamine.widgets;

import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import org.eclipse.swt.widgets.Composite;

/** A quantity as people write it: {@code 1 1/2 cup}, {@code 6 x 1 l}, {@code 2 lb 4 oz}. */
public final class QuantityField extends EntryField<Quantity> {

    /** An empty field. */
    public QuantityField(Composite parent) {
        super(parent, "1 1/2 cup, 6 x 1 l, 250 g");
    }

    @Override
    protected Quantity read(String typed) {
        return QuantityText.parse(typed);
    }

    @Override
    protected String write(Quantity value) {
        return QuantityText.formatExact(value);
    }
}
