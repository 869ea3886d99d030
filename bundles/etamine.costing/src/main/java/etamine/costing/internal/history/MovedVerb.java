package etamine.costing.internal.history;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.costing.CostHistory;
import etamine.costing.Moved;
import etamine.costing.internal.words.CostJson;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code moved [--since DATE]}: what has changed and why. */
@Component
public final class MovedVerb implements Verb {
    private static final int USUAL_DAYS = 28;

    private final CostHistory history;
    private final Items items;
    private final Kitchen kitchen;

    /** The verb on the open book. */
    @Activate
    public MovedVerb(@Reference CostHistory history, @Reference Items items, @Reference Kitchen kitchen) {
        this.history = history;
        this.items = items;
        this.kitchen = kitchen;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("moved", "What prices and plates have moved since a day, by how much and why")
                .with("--since", "DATE", "the first day that counts; four weeks ago if not said");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        LocalDate since = kitchen.today().minusDays(USUAL_DAYS);
        Optional<String> day = call.option("--since");
        if (day.isPresent()) {
            try {
                since = LocalDate.parse(day.get());
            } catch (DateTimeException unreadable) {
                throw VerbException.wrongCall("“" + day.get() + "” is not a day; write one such as 2026-11-16.");
            }
        }
        Moved moved = history.since(since);
        boolean over = moved.plates().stream().anyMatch(Moved.PlateMove::overTarget);
        return new Report(over ? Outcome.LOOK : Outcome.DONE, json(moved), lines(moved));
    }

    private static Map<String, Object> json(Moved moved) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("since", moved.since().toString());
        json.put("prices", moved.prices().stream().map(MovedVerb::price).toList());
        json.put("plates", moved.plates().stream().map(MovedVerb::plate).toList());
        return json;
    }

    private static Map<String, Object> price(Moved.PriceMove move) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("item", move.item());
        json.put("on", move.on().toString());
        json.put("from", CostJson.price(move.from()));
        json.put("to", CostJson.price(move.to()));
        CostJson.put(json, "percent", move.percent().map(BigDecimal::toPlainString));
        json.put("source", move.source());
        return json;
    }

    private static Map<String, Object> plate(Moved.PlateMove move) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("recipe", move.recipe());
        json.put("before", exact(move.before()));
        json.put("now", exact(move.now()));
        json.put("change", exact(move.change()));
        Map<String, Object> effects = new LinkedHashMap<>();
        effects.put("price", exact(move.effects().price()));
        effects.put("yield", exact(move.effects().yield()));
        effects.put("portion", exact(move.effects().portion()));
        effects.put("recipe", exact(move.effects().recipe()));
        json.put("effects", effects);
        json.put("causes", move.causes().stream().map(MovedVerb::cause).toList());
        json.put("lowerBound", move.lowerBound());
        CostJson.put(json, "written", move.written().map(LocalDate::toString));
        CostJson.put(json, "foodCostPercent", move.foodCostPercent().map(BigDecimal::toPlainString));
        CostJson.put(json, "targetFoodCostPercent", move.target().map(BigDecimal::toPlainString));
        json.put("overTarget", move.overTarget());
        return json;
    }

    private static Map<String, Object> cause(Moved.Cause cause) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("kind", cause.kind().name().toLowerCase(Locale.ROOT));
        json.put("subject", cause.subject());
        CostJson.put(json, "amount", cause.amount().map(MovedVerb::exact));
        json.put("text", cause.text());
        return json;
    }

    /** Every decimal there is, so that effects still add up to the change. */
    private static String exact(Money money) {
        return money.amount().toPlainString();
    }

    private List<String> lines(Moved moved) {
        List<String> lines = new ArrayList<>();
        lines.add("Since " + moved.since() + ":");
        TextTable prices = new TextTable("Item", "On", ">From", ">To", ">%", "Source");
        moved.prices()
                .forEach(move -> prices.row(
                        items.name(move.item()),
                        move.on().toString(),
                        CostJson.text(move.from()),
                        CostJson.text(move.to()),
                        move.percent().map(BigDecimal::toPlainString).orElse(""),
                        move.source()));
        lines.addAll(moved.prices().isEmpty() ? List.of("No price has moved.") : prices.lines());
        lines.add("");
        lines.addAll(moved.plates().isEmpty() ? List.of("No plate has moved.") : plates(moved));
        return lines;
    }

    private List<String> plates(Moved moved) {
        TextTable table =
                new TextTable("Plate", ">Before", ">Now", ">Change", ">Price", ">Yield", ">Portion", ">Recipe", "");
        for (Moved.PlateMove move : moved.plates()) {
            table.row(
                    items.name(move.recipe()),
                    cents(move.before()),
                    cents(move.now()),
                    cents(move.change()),
                    cents(move.effects().price()),
                    cents(move.effects().yield()),
                    cents(move.effects().portion()),
                    cents(move.effects().recipe()),
                    (move.lowerBound() ? "at least; " : "")
                            + (move.overTarget() ? "above its target; " : "")
                            + move.causes().stream()
                                    .findFirst()
                                    .map(Moved.Cause::text)
                                    .orElse(""));
        }
        return table.lines();
    }

    private static String cents(Money money) {
        return money.rounded().toString();
    }
}
