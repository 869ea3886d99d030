package etamine.ingredients.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.item.Preparation;
import etamine.measures.Conversion;
import etamine.measures.Converter;
import etamine.measures.Equivalence;
import etamine.measures.MeasureStyle;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import java.util.ArrayList;
import java.util.List;

/** Finds measures that say different things about the same amount. */
final class MeasureContradictions {
    /** Kitchen measures are rounded; closer than this they agree. */
    private static final Ratio TOLERANCE = Ratio.of(1, 20);

    private MeasureContradictions() {}

    /** One sentence for each measure that disagrees with those before it in the same list. */
    static List<String> of(Item item) {
        List<String> sentences = new ArrayList<>(within(item.measures(), ""));
        for (Preparation preparation : item.preparations()) {
            sentences.addAll(within(preparation.measures(), " of “" + preparation.name() + "”"));
        }
        return sentences;
    }

    private static List<String> within(List<Equivalence> measures, String whose) {
        List<String> sentences = new ArrayList<>();
        for (int i = 0; i < measures.size(); i++) {
            Equivalence measure = measures.get(i);
            Converter others = Converter.of(measures.subList(0, i));
            if (others.convert(measure.of(), measure.is().unit()) instanceof Conversion.Converted said
                    && apart(said.quantity(), measure.is())) {
                sentences.add("The measure " + measure.of() + " = " + measure.is() + whose
                        + " contradicts the others, by which it would be "
                        + QuantityText.format(said.quantity(), MeasureStyle.METRIC) + "; correct one of them.");
            }
        }
        return sentences;
    }

    private static boolean apart(Quantity one, Quantity other) {
        Ratio share = one.dividedBy(other);
        return share.minus(Ratio.ONE).abs().compareTo(TOLERANCE) > 0;
    }
}
