package etamine.recipes.internal.line;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Use;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.recipes.UseLines.Part;
import etamine.recipes.UseLines.Reading;
import etamine.recipes.UseLines.Span;
import etamine.recipes.internal.rule.RecipeRules;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;

/**
 * Reads one line by trying where its amount could end, longest first, and asking which rest is a name. Places are those
 * in a line with single blanks; {@link TypedLines} brings them back to what was typed. Used once.
 */
final class LineReading {
    private static final int SUGGESTIONS = 3;

    private final String line;
    private final ThingNames names;
    private final Function<String, List<String>> near;
    private Optional<Basis> basis = Optional.empty();
    private final List<Span> marks = new ArrayList<>();

    /** A line with single blanks; {@code near} gives names that may have been meant. */
    LineReading(String line, ThingNames names, Function<String, List<String>> near) {
        this.line = line;
        this.names = names;
        this.near = near;
    }

    Reading read() {
        Cut body = withoutBasis(Cut.whole(line));
        Optional<Matcher> range = TypedAmount.range(body.text());
        if (range.isPresent()) {
            return range(range.get());
        }
        AmountSplit split = AmountSplit.of(body);
        return front(split)
                .or(() -> back(split))
                .or(() -> alone(body))
                .or(() -> loose(split))
                .orElseGet(() -> unknown(split));
    }

    private Cut withoutBasis(Cut whole) {
        for (Basis each : Basis.values()) {
            String ending = " " + each.name();
            if (whole.text().toUpperCase(Locale.ROOT).endsWith(ending)) {
                int at = whole.to() - ending.length();
                basis = Optional.of(each);
                marks.add(new Span(Part.BASIS, at + 1, whole.to()));
                return whole.before(at);
            }
        }
        return whole;
    }

    private Reading range(Matcher range) {
        String rest = line.substring(range.end());
        String text = "“" + range.group() + "” leaves open how much; write one amount.";
        marks.add(0, new Span(Part.UNKNOWN, range.start(), range.end()));
        return new Reading.Unclear(text, marks, List.of(range.group(1) + rest, range.group(2) + rest));
    }

    /** {@code 250 g butter}; units that everybody or the item knows before words that may become units. */
    private Optional<Reading> front(AmountSplit split) {
        List<Reading> readings = new ArrayList<>();
        for (int words = split.most(); words > 0; words--) {
            Cut amount = split.amount(words);
            if (TypedAmount.isPossible(amount.text(), names.longWords())) {
                names.exactly(split.rest(words))
                        .map(named -> use(amount, named))
                        .ifPresent(readings::add);
            }
        }
        return readings.stream()
                .filter(this::isMeasured)
                .findFirst()
                .or(() -> readings.stream()
                        .filter(Reading.Clear.class::isInstance)
                        .findFirst())
                .or(() -> readings.stream().findFirst());
    }

    private boolean isMeasured(Reading reading) {
        return reading instanceof Reading.Clear clear && names.measures(clear.use());
    }

    /** A name without an amount. */
    private Optional<Reading> alone(Cut body) {
        return names.exactly(body).map(named -> use(body.before(0), named));
    }

    /** {@code butter 250 g}. */
    private Optional<Reading> back(AmountSplit split) {
        for (int words = split.firstBehind(); words < split.starts().size(); words++) {
            Cut amount = split.behind(words);
            if (TypedAmount.mayBegin(amount.text())) {
                Optional<NamedThing> named = names.exactly(split.beforeBehind(words));
                if (named.isPresent()) {
                    return Optional.of(use(amount, named.get()));
                }
            }
        }
        return Optional.empty();
    }

    /** With words left out that are neither amount nor name. */
    private Optional<Reading> loose(AmountSplit split) {
        int words = split.sure();
        return names.nearly(split.rest(words)).map(named -> use(split.amount(words), named));
    }

    private Reading use(Cut amount, NamedThing named) {
        Item item = named.item();
        marks.removeIf(mark -> mark.part() != Part.BASIS);
        marks.addAll(named.spans());
        if (amount.isEmpty()) {
            return unclear("Write how much " + item.name() + ", such as 250 g." + leftOver());
        }
        marks.add(new Span(Part.QUANTITY, amount.from(), amount.to()));
        if (!leftOver().isEmpty()) {
            return new Reading.Unclear(leftOver().strip(), sorted(), List.of(bare(amount, named)));
        }
        if (!named.isKnown()) {
            return notPrepared(amount, named);
        }
        return quantity(amount, named);
    }

    private Reading quantity(Cut amount, NamedThing named) {
        Item item = named.item();
        try {
            Quantity quantity = TypedAmount.of(withoutSizes(amount, item), TypedAmount.own(item));
            if (quantity.signum() <= 0) {
                return unclear("Write more than zero of " + item.name() + ".");
            }
            Basis usual = named.as().isPresent() ? Basis.EP : Basis.AP;
            return new Reading.Clear(
                    new Use(
                            item.id(),
                            quantity,
                            named.as(),
                            basis.orElse(usual),
                            named.substitutes().stream().map(Item::id).toList()),
                    sorted());
        } catch (TypedAmount.NearUnit slip) {
            mark(amount);
            return new Reading.Unclear(slip.getMessage(), sorted(), List.of(slip.mended(line)));
        } catch (MeasureException unreadable) {
            mark(amount);
            return unclear(unreadable.getMessage());
        }
    }

    /** {@code 3 large}: the size is passed over unless the item has it for a unit. */
    private String withoutSizes(Cut amount, Item item) {
        String text = amount.text();
        int at = text.lastIndexOf(' ');
        String last = text.substring(at + 1);
        boolean own =
                TypedAmount.own(item).stream().anyMatch(unit -> unit.symbol().equalsIgnoreCase(last));
        if (at < 0 || own || !ThingNames.SIZES.matcher(last).matches()) {
            return text;
        }
        marks.removeIf(mark -> mark.part() == Part.QUANTITY);
        marks.add(new Span(Part.QUANTITY, amount.from(), amount.from() + at));
        marks.add(new Span(Part.NOTE, amount.from() + at + 1, amount.to()));
        return withoutSizes(amount.before(at), item);
    }

    private void mark(Cut amount) {
        marks.removeIf(span -> span.part() == Part.QUANTITY);
        marks.add(new Span(Part.UNKNOWN, amount.from(), amount.to()));
    }

    private Reading notPrepared(Cut amount, NamedThing named) {
        marks.replaceAll(
                mark -> mark.part() == Part.PREPARATION ? new Span(Part.UNKNOWN, mark.from(), mark.to()) : mark);
        List<String> suggestions = named.item().preparations().stream()
                .limit(SUGGESTIONS)
                .map(known -> amount.text() + " " + named.item().name() + ", " + known.name())
                .toList();
        String text = RecipeRules.unknownPreparation(named.item(), named.as().orElseThrow());
        return new Reading.Unclear(text, sorted(), suggestions);
    }

    /** The words that are neither amount nor name, as a sentence; empty when there are none. */
    private String leftOver() {
        return marks.stream()
                .filter(mark -> mark.part() == Part.UNKNOWN)
                .map(mark -> line.substring(mark.from(), mark.to()))
                .findFirst()
                .map(words -> " “" + words + "” is not understood; leave it out, or put it in brackets as a remark.")
                .orElse("");
    }

    private static String bare(Cut amount, NamedThing named) {
        return amount.text() + " " + named.item().name()
                + named.as().map(as -> ", " + as).orElse("");
    }

    private Reading unknown(AmountSplit split) {
        int words = split.sure();
        Cut amount = split.amount(words);
        Cut rest = split.rest(words);
        marks.removeIf(mark -> mark.part() != Part.BASIS);
        if (!amount.isEmpty()) {
            marks.add(new Span(Part.QUANTITY, amount.from(), amount.to()));
        }
        marks.add(new Span(Part.UNKNOWN, rest.from(), rest.to()));
        int comma = rest.text().indexOf(',');
        Cut name = comma > 0 ? rest.before(comma) : rest;
        String behind = comma > 0 ? rest.text().substring(comma) : "";
        List<String> found = near.apply(name.text());
        if (found.isEmpty()) {
            return unclear("No item is called “" + excerpt(name.text())
                    + "”; add it to the ingredients first, or write the recipe that makes it.");
        }
        String text = "No item is called exactly that; did you mean " + String.join(" or ", found) + "?";
        String before = amount.isEmpty() ? "" : amount.text() + " ";
        return new Reading.Unclear(
                text,
                sorted(),
                found.stream().map(each -> before + each + behind).toList());
    }

    private static String excerpt(String text) {
        return text.length() > 40
                ? text.substring(0, text.offsetByCodePoints(0, Math.min(40, text.codePointCount(0, text.length()))))
                        + "…"
                : text;
    }

    private Reading unclear(String text) {
        return new Reading.Unclear(text, sorted(), List.of());
    }

    private List<Span> sorted() {
        return marks.stream().sorted(Comparator.comparingInt(Span::from)).toList();
    }
}
