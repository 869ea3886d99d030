package etamine.costing.internal.rules;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.costing.CostRules;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.EntryReader;
import etamine.kitchen.exchange.EntryTroubles;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The rules as they are written in the section {@code costing}. */
final class RulesForm {
    private static final BigDecimal MOST_PERCENT = BigDecimal.valueOf(1000);

    private RulesForm() {}

    /** The rules; {@link EntryTroubles} with every place that cannot be understood. */
    static CostRules read(ObjectNode entry) {
        EntryReader reader = new EntryReader(entry);
        EntryReader labour = reader.part("labour");
        CostRules rules = new CostRules(
                List.copyOf(reader.words("prices")),
                new CostRules.Labour(
                        labour.flag("on"),
                        labour.decimal("perHour"),
                        stations(entry.path("labour").path("stations"), labour.part("stations"))),
                reader.decimal("targetFoodCostPercent"),
                endings(reader));
        EntryTroubles.throwIfAny(reader);
        problems(rules).forEach(problem -> reader.trouble("", problem));
        EntryTroubles.throwIfAny(reader);
        return rules;
    }

    private static Map<String, BigDecimal> stations(JsonNode node, EntryReader reader) {
        Map<String, BigDecimal> stations = new TreeMap<>();
        node.fieldNames()
                .forEachRemaining(name -> reader.decimal(name).ifPresent(rate -> stations.put(name.strip(), rate)));
        return stations;
    }

    private static List<BigDecimal> endings(EntryReader reader) {
        return reader.words("endings").stream()
                .flatMap(text -> ending(reader, text).stream())
                .toList();
    }

    private static Optional<BigDecimal> ending(EntryReader reader, String text) {
        if (text.matches("0?\\.[0-9]{1,3}")) {
            return Optional.of(new BigDecimal(text));
        }
        reader.trouble("endings", "“" + text + "” is not an ending; write a point and digits, such as .95.");
        return Optional.empty();
    }

    /** What is wrong with rules, as sentences. */
    static List<String> problems(CostRules rules) {
        List<String> problems = new ArrayList<>();
        rules.targetFoodCostPercent()
                .filter(percent -> percent.signum() <= 0 || percent.compareTo(MOST_PERCENT) > 0)
                .ifPresent(percent -> problems.add("A target food cost of " + percent.toPlainString()
                        + " % cannot be met; write" + " more than 0 and at most 1000, such as 28."));
        rules.labour()
                .perHour()
                .filter(rate -> rate.signum() < 0)
                .ifPresent(rate -> problems.add("An hour cannot cost " + rate.toPlainString() + "; write 0 or more."));
        rules.labour().stations().forEach((station, rate) -> {
            if (rate.signum() < 0 || station.isBlank()) {
                problems.add("The station “" + station + "” needs a name and a rate of 0 or more, such as sauce"
                        + " at 16.50.");
            }
        });
        rules.endings().stream()
                .filter(ending -> ending.signum() < 0 || ending.compareTo(BigDecimal.ONE) >= 0 || ending.scale() > 3)
                .forEach(ending -> problems.add("A price cannot end in " + ending.toPlainString()
                        + "; write an ending from 0 to less than 1, such as 0.95."));
        return problems;
    }

    /** How the rules are written; what is not set is left out. */
    static ObjectNode write(CostRules rules) {
        ObjectNode entry = EntryJson.empty();
        if (!rules.prices().isEmpty()) {
            ArrayNode prices = entry.putArray("prices");
            rules.prices().forEach(prices::add);
        }
        ObjectNode labour = entry.putObject("labour").put("on", rules.labour().on());
        rules.labour().perHour().ifPresent(rate -> labour.put("perHour", rate.toPlainString()));
        if (!rules.labour().stations().isEmpty()) {
            ObjectNode stations = labour.putObject("stations");
            rules.labour().stations().forEach((name, rate) -> stations.put(name, rate.toPlainString()));
        }
        rules.targetFoodCostPercent().ifPresent(percent -> entry.put("targetFoodCostPercent", percent.toPlainString()));
        if (!rules.endings().isEmpty()) {
            ArrayNode endings = entry.putArray("endings");
            rules.endings().forEach(ending -> endings.add(ending.toPlainString().substring(1)));
        }
        return entry;
    }
}
