package etamine.recipes.internal.linked;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Use;
import etamine.measures.Dimension;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Unit;
import etamine.recipes.FoundRecipes.Fresh;
import etamine.recipes.FoundRecipes.Line;
import etamine.recipes.FoundRecipes.State;
import etamine.recipes.UseLines;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Lines of foreign recipes. What the book has no ingredient for is offered as a new one, the same for the whole file. */
final class LdLines {
    private static final int LONGEST = 300;
    private static final int LONGEST_AMOUNT = 6;

    private final UseLines lines;
    private final Function<String, Optional<Item>> items;
    private final Predicate<String> taken;
    private final Map<String, Fresh> fresh = new HashMap<>();

    /** Reads with these lines; {@code taken} knows the identifiers that a new ingredient cannot have. */
    LdLines(UseLines lines, Function<String, Optional<Item>> items, Predicate<String> taken) {
        this.lines = lines;
        this.items = items;
        this.taken = taken;
    }

    Line read(String text) {
        String line = text.replaceAll("\\s+", " ").strip();
        if (line.isEmpty() || line.length() > LONGEST) {
            return unclear(LdWords.shown(line), "This is no line of one ingredient; write an amount and an item.");
        }
        UseLines.Reading reading = lines.read(line);
        if (reading instanceof UseLines.Reading.Clear clear) {
            Use use = clear.use();
            if (measures(use)) {
                return new Line(line, State.CLEAR, Optional.of(use), Optional.empty(), "");
            }
            return (isAdjective(use.quantity().unit()) ? offered(line, "") : Optional.<Line>empty())
                    .orElseGet(() -> unclear(line, unmeasured(use)));
        }
        UseLines.Reading.Unclear unclear = (UseLines.Reading.Unclear) reading;
        boolean known = unclear.spans().stream().anyMatch(span -> span.part() == UseLines.Part.ITEM);
        String near = unclear.suggestions().isEmpty()
                ? ""
                : " Or is it “" + unclear.suggestions().get(0) + "”?";
        return (known ? Optional.<Line>empty() : offered(line, near)).orElseGet(() -> unclear(line, unclear.text()));
    }

    /** What cannot be understood now, whatever the reason. */
    static Line unclear(String text, String remark) {
        return new Line(text, State.UNCLEAR, Optional.empty(), Optional.empty(), remark);
    }

    /** Whether the amount has a unit that this item can be measured in: an own word needs a measure of the item's. */
    private boolean measures(Use use) {
        Unit unit = use.quantity().unit();
        return unit.dimension() != Dimension.WORD
                || items.apply(use.item()).stream()
                        .flatMap(item -> Stream.concat(
                                item.measures().stream(),
                                item.preparations().stream().flatMap(each -> each.measures().stream())))
                        .anyMatch(measure -> measure.of().unit().isLike(unit)
                                || measure.is().unit().isLike(unit));
    }

    /** A unit with a word behind it is no unit: 120 ml double cream. */
    private static boolean isAdjective(Unit unit) {
        return Unit.find(unit.symbol().split(" ")[0]).isPresent();
    }

    private String unmeasured(Use use) {
        String name = items.apply(use.item()).map(Item::name).orElse(use.item());
        return "Write the line in grams, millilitres or pieces, or give " + name + " a measure for “"
                + use.quantity().unit() + "”.";
    }

    /** A line of an item that the file itself names and the book does not have. */
    Line named(Use use, String name, String text) {
        Fresh item = fresh.computeIfAbsent(
                use.item(), id -> new Fresh(id, name.isEmpty() ? id : name, counted(use.quantity())));
        return new Line(text, State.NEW, Optional.of(use), Optional.of(item), offer(item));
    }

    private Optional<Line> offered(String line, String near) {
        String[] words = line.split(" ");
        for (int count = Math.min(words.length - 1, LONGEST_AMOUNT); count > 0; count--) {
            Optional<Quantity> amount = amount(String.join(" ", List.of(words).subList(0, count)));
            if (amount.isPresent()) {
                String rest = String.join(" ", List.of(words).subList(count, words.length));
                return offered(line, amount.get(), rest.replaceFirst("(?i)^of ", ""), near);
            }
        }
        return Optional.empty();
    }

    private Optional<Line> offered(String line, Quantity amount, String rest, String near) {
        String name = rest.replaceAll("\\([^)]*\\)", " ")
                .split("[,;]", 2)[0]
                .replaceAll("\\s+", " ")
                .strip();
        boolean nameable = name.length() > 1
                && name.length() <= 80
                && name.codePoints().filter(Character::isLetter).count() > 1
                && !(lines.read("1 g " + name) instanceof UseLines.Reading.Clear clear && measures(clear.use()));
        if (!nameable) {
            return Optional.empty(); // the ingredient is known: it is the amount or the preparation that is not
        }
        String key = name.toLowerCase(Locale.ROOT);
        Fresh item = fresh.computeIfAbsent(key, missing -> new Fresh(freshId(name), titled(name), counted(amount)));
        Use use = new Use(item.id(), amount, Optional.empty(), Basis.AP);
        String left = rest.length() > name.length() ? " What else the line says stands in the notes." : "";
        return Optional.of(new Line(line, State.NEW, Optional.of(use), Optional.of(item), offer(item) + near + left));
    }

    private static String offer(Fresh item) {
        return "The book has no " + item.name() + "; add it, or write the line with another name.";
    }

    private static Optional<Quantity> amount(String text) {
        try {
            Quantity amount =
                    text.matches("[0-9½⅓⅔¼¾⅛ ./]+") ? QuantityText.parse(text + " ea") : QuantityText.parse(text);
            boolean usual =
                    amount.unit().dimension() != Dimension.WORD && amount.unit().dimension() != Dimension.PORTION;
            return Optional.of(amount).filter(found -> usual && found.signum() > 0);
        } catch (MeasureException unreadable) {
            return Optional.empty();
        }
    }

    /** A new ingredient is counted in kilograms, litres or pieces, as its first line is measured. */
    private static Unit counted(Quantity amount) {
        return switch (amount.unit().dimension()) {
            case MASS -> Unit.KG;
            case VOLUME -> Unit.L;
            default -> Unit.EA;
        };
    }

    private String freshId(String name) {
        String base = PlainId.of(name, "ingredient");
        String id = base;
        for (int i = 2; taken.test(id) || isOffered(id); i++) {
            id = base + "-" + i;
        }
        return id;
    }

    private boolean isOffered(String id) {
        return fresh.values().stream().anyMatch(item -> item.id().equals(id));
    }

    private static String titled(String name) {
        int first = name.codePointAt(0);
        return Character.toString(Character.toTitleCase(first)) + name.substring(Character.charCount(first));
    }
}
