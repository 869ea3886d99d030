package etamine.recipes.ui.internal;

import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Unit;
import etamine.recipes.UseLines;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What a line names that the book does not have yet.
 *
 * @param item the item's id when only its preparation is new; empty when the item itself is
 * @param name what is new
 * @param preparation what stands behind the new item's comma; empty when nothing
 * @param quantity how much the line asks for, where that was understood
 */
record Missing(Optional<String> item, String name, String preparation, Optional<Quantity> quantity) {
    /** Words that measure by themselves, in the singular by what may be typed. */
    private static final Map<String, String> WORDS = new HashMap<>();

    static {
        for (String word :
                ("bunch sprig stalk head handful pinch dash drop clove slice sheet piece can jar stick strip knob wedge")
                        .split(" ")) {
            WORDS.put(word, word);
            WORDS.put(word + (word.matches(".*(ch|sh)") ? "es" : "s"), word);
        }
        WORDS.put("leaf", "leaf");
        WORDS.put("leaves", "leaf");
        WORDS.put("loaf", "loaf");
        WORDS.put("loaves", "loaf");
    }

    static Optional<Missing> of(String text, UseLines.Reading.Unclear reading, ItemWords words) {
        Optional<String> unknown = part(text, reading.spans(), UseLines.Part.UNKNOWN);
        if (unknown.isEmpty()) {
            return Optional.empty();
        }
        Optional<Quantity> quantity =
                part(text, reading.spans(), UseLines.Part.QUANTITY).flatMap(Missing::quantity);
        Optional<String> known = part(text, reading.spans(), UseLines.Part.ITEM);
        if (known.isPresent()) {
            return Optional.of(new Missing(known.map(words::id), unknown.get(), "", quantity))
                    .filter(missing -> text.indexOf(unknown.get()) > text.indexOf(known.get()));
        }
        int comma = unknown.get().indexOf(',');
        String name = comma < 0 ? unknown.get() : unknown.get().substring(0, comma);
        String behind = comma < 0 ? "" : unknown.get().substring(comma + 1);
        String prepared = behind.isEmpty()
                ? part(text, reading.spans(), UseLines.Part.PREPARATION).orElse("")
                : behind;
        return Optional.of(new Missing(Optional.empty(), name.strip(), prepared.strip(), quantity))
                .map(Missing::measuredByWord)
                .filter(missing -> !missing.name().isEmpty() && quantity.isPresent());
    }

    /** “5 leaf bay” of a bay that is not there yet asks for five leaves. */
    private Missing measuredByWord() {
        String[] words = name.split("\\s+", 2);
        Optional<String> unit =
                words.length < 2 ? Optional.empty() : Optional.ofNullable(WORDS.get(words[0].toLowerCase(Locale.ROOT)));
        return quantity.filter(amount -> amount.unit().equals(Unit.EA) && unit.isPresent())
                .map(amount -> new Missing(
                        item,
                        words[1].replaceFirst("(?i)^of\\s+", ""),
                        preparation,
                        Optional.of(new Quantity(amount.amount(), Unit.word(unit.get())))))
                .orElse(this);
    }

    private static Optional<String> part(String text, List<UseLines.Span> spans, UseLines.Part wanted) {
        return spans.stream()
                .filter(span -> span.part() == wanted && span.to() <= text.length())
                .findFirst()
                .map(span -> text.substring(span.from(), span.to()).strip())
                .filter(words -> !words.isEmpty());
    }

    private static Optional<Quantity> quantity(String text) {
        try {
            return Optional.of(
                    text.matches("[0-9½⅓⅔¼¾⅛ ./]+") ? QuantityText.parse(text + " ea") : QuantityText.parse(text));
        } catch (MeasureException unclear) {
            return Optional.empty();
        }
    }

    /** What the line's sentence proposes. */
    String offer() {
        return item.isPresent() ? "Add the preparation “" + name + "”" : "Add “" + name + "” as a new ingredient";
    }

    /** A unit its stock could be counted in, by how the line measures it. */
    Unit countIn() {
        return quantity.map(Quantity::unit)
                .map(unit -> switch (unit.dimension()) {
                    case MASS -> Unit.KG;
                    case VOLUME -> Unit.L;
                    default -> Unit.EA;
                })
                .orElse(Unit.KG);
    }
}
