package etamine.kitchen.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.base.Exemption;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Reads the members of one JSON entry. What cannot be read becomes a trouble with its pointer and counts as absent, so
 * that reading always goes on to the end. Not thread-safe.
 */
@Exemption(
        rule = "exported-types",
        because = "sections of all modules read members alike, and modules may not share code otherwise")
public final class EntryReader {
    private final JsonNode node;
    private final String pointer;
    private final List<ExchangeEntry.Trouble> troubles;

    /** A reader of a whole entry. */
    public EntryReader(JsonNode entry) {
        this(entry, "", new ArrayList<>());
    }

    private EntryReader(JsonNode node, String pointer, List<ExchangeEntry.Trouble> troubles) {
        this.node = node;
        this.pointer = pointer;
        this.troubles = troubles;
    }

    /** What was wrong so far, in this part and every other part of the entry. */
    public List<ExchangeEntry.Trouble> troubles() {
        return List.copyOf(troubles);
    }

    /** The pointer of a member within the entry; of this part itself when the member is empty. */
    public String pointer(String member) {
        return member.isEmpty() ? pointer : pointer + "/" + member;
    }

    /** Notes something wrong with a member. */
    public void trouble(String member, String problem) {
        troubles.add(new ExchangeEntry.Trouble(pointer(member), problem));
    }

    /** Whether the member is there and not null. */
    public boolean has(String member) {
        return node.hasNonNull(member);
    }

    /** The member's text; empty when it is absent. */
    public String text(String member) {
        return read(member, text -> text).orElse("");
    }

    /** The member's text, which must not be empty; it counts as empty after the trouble was noted. */
    public String needed(String member) {
        String text = text(member).strip();
        if (text.isEmpty()) {
            trouble(member, "Write the " + member + ".");
        }
        return text;
    }

    /** A quantity in the exchange form. */
    public Optional<Quantity> quantity(String member) {
        return read(member, Quantity::parse);
    }

    /** A quantity that must be there and more than zero. */
    public Optional<Quantity> positive(String member) {
        if (!has(member)) {
            trouble(member, "Write the " + member + ", such as 250 g.");
            return Optional.empty();
        }
        return quantity(member).filter(quantity -> {
            if (quantity.signum() <= 0) {
                trouble(member, "Write more than zero instead of " + quantity + ".");
            }
            return quantity.signum() > 0;
        });
    }

    /** A number such as {@code 0.74} or {@code 3/4}. */
    public Optional<Ratio> ratio(String member) {
        return read(member, Ratio::parse);
    }

    /** A plain decimal that is not negative. */
    public Optional<BigDecimal> decimal(String member) {
        return read(member, EntryReader::plainDecimal);
    }

    /** A price with its {@code per}, not negative. */
    public Optional<UnitPrice> price(String member) {
        if (!has(member)) {
            return Optional.empty();
        }
        EntryReader price = part(member);
        Optional<BigDecimal> amount = price.decimal("amount");
        Optional<Quantity> per = price.positive("per");
        if (!price.has("amount")) {
            price.trouble("amount", "Write the amount, such as 2.10.");
        }
        return amount.flatMap(money -> per.map(quantity -> new UnitPrice(money, quantity)));
    }

    /** A number of days, weeks, months or years such as {@code P3D}; not negative. */
    public Optional<Period> period(String member) {
        return read(member, text -> {
            Period period = Period.parse(text);
            if (period.isNegative()) {
                throw new IllegalArgumentException("Write a time that is not negative, such as P3D.");
            }
            return period;
        });
    }

    /** A time such as {@code PT45M}, not negative; nothing counts as no time. */
    public Duration duration(String member) {
        return read(member, text -> {
                    Duration duration = Duration.parse(text);
                    if (duration.isNegative()) {
                        throw new IllegalArgumentException("Write a time that is not negative, such as PT45M.");
                    }
                    return duration;
                })
                .orElse(Duration.ZERO);
    }

    /** A day such as {@code 2026-11-27}. */
    public Optional<LocalDate> date(String member) {
        return read(member, text -> {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeException unreadable) {
                throw new IllegalArgumentException(
                        "“" + text + "” is not a day; write one such as 2026-11-27.", unreadable);
            }
        });
    }

    /** A whole number of at least {@code least}, written as a number. */
    public Optional<Integer> wholeFrom(String member, int least) {
        JsonNode value = node.path(member);
        if (value.isMissingNode() || value.isNull()) {
            return Optional.empty();
        }
        if (!value.isIntegralNumber() || !value.canConvertToInt() || value.intValue() < least) {
            trouble(member, "Write a whole number of at least " + least + " here.");
            return Optional.empty();
        }
        return Optional.of(value.intValue());
    }

    /** A constant of an enumeration, written in lower case. */
    public <E extends Enum<E>> Optional<E> choice(String member, Class<E> kind) {
        return read(member, text -> {
            for (E constant : kind.getEnumConstants()) {
                if (constant.name().equalsIgnoreCase(text.replace('-', '_'))) {
                    return constant;
                }
            }
            throw new IllegalArgumentException(
                    "“" + text + "” is not one of " + String.join(", ", choices(kind)) + ".");
        });
    }

    /** A list of words, each once, in their order. */
    public Set<String> words(String member) {
        Set<String> words = new LinkedHashSet<>();
        node.path(member).forEach(word -> words.add(word.asText().strip()));
        words.remove("");
        return words;
    }

    /** An object of words and their names; what is empty is left out. */
    public Map<String, String> names(String member) {
        Map<String, String> names = new LinkedHashMap<>();
        node.path(member)
                .properties()
                .forEach(name -> names.put(
                        name.getKey().strip(), name.getValue().asText().strip()));
        names.remove("");
        names.values().removeIf(String::isEmpty);
        return names;
    }

    /** Whether the member is {@code true}. */
    public boolean flag(String member) {
        return node.path(member).asBoolean(false);
    }

    /** A whole number; {@code otherwise} when it is absent. */
    public int whole(String member, int otherwise) {
        return node.path(member).asInt(otherwise);
    }

    /** The reader of an object within this part. */
    public EntryReader part(String member) {
        return new EntryReader(node.path(member), pointer(member), troubles);
    }

    /** A reader for each element of a list; none when it is absent. */
    public List<EntryReader> each(String member) {
        List<EntryReader> parts = new ArrayList<>();
        JsonNode list = node.path(member);
        for (int i = 0; i < list.size(); i++) {
            parts.add(new EntryReader(list.path(i), pointer(member) + "/" + i, troubles));
        }
        return parts;
    }

    /** A member in a form of its own; {@code reading} throws {@link IllegalArgumentException} with a sentence. */
    public <T> Optional<T> read(String member, Function<String, T> reading) {
        JsonNode value = node.path(member);
        if (value.isMissingNode() || value.isNull()) {
            return Optional.empty();
        }
        if (value.isContainerNode()) {
            trouble(member, "Write a single value here.");
            return Optional.empty();
        }
        try {
            return Optional.of(reading.apply(value.asText()));
        } catch (DateTimeException unreadable) {
            trouble(
                    member,
                    "“" + value.asText() + "” is not a time; write P3D for three days or PT45M for 45 minutes.");
        } catch (IllegalArgumentException unreadable) {
            trouble(member, unreadable.getMessage());
        }
        return Optional.empty();
    }

    private static BigDecimal plainDecimal(String text) {
        if (!text.matches("[0-9]{1,30}(\\.[0-9]{1,30})?")) {
            throw new IllegalArgumentException(
                    "“" + text + "” is not an amount; write digits and a point, not less than zero, such as 12.50.");
        }
        return new BigDecimal(text);
    }

    private static <E extends Enum<E>> List<String> choices(Class<E> kind) {
        return List.of(kind.getEnumConstants()).stream()
                .map(constant -> constant.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .toList();
    }
}
