package etamine.costing.internal.trial;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.costing.Experiment;
import etamine.costing.Experiments;
import etamine.costing.Trial;
import etamine.costing.internal.words.CostJson;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.item.Items;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code whatif CHANGE...}: what changes would do to every plate; nothing is written unless told to. */
@Component
public final class WhatIfVerb implements Verb {
    private final Experiments experiments;
    private final Items items;

    /** The verb on the open book. */
    @Activate
    public WhatIfVerb(@Reference Experiments experiments, @Reference Items items) {
        this.experiments = experiments;
        this.items = items;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of(
                        "whatif",
                        "What other prices, yields, portions or menu prices would do to every plate; changes are "
                                + ExperimentWords.FORMS,
                        "CHANGE...")
                .with("--accept", "", "write the changes into the book, in one step that can be undone");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        try {
            Experiment experiment = ExperimentWords.read(call.arguments());
            Trial trial = experiments.reckon(experiment);
            List<String> notes = new ArrayList<>(trial.notes());
            if (call.has("--accept")) {
                notes.addAll(experiments.accept(experiment));
            }
            List<Trial.Plate> moved = trial.moved().stream()
                    .sorted(Comparator.comparing(Trial.Plate::contributionChange))
                    .toList();
            boolean look = !notes.isEmpty();
            return new Report(
                    look ? Outcome.LOOK : Outcome.DONE, json(moved, notes, call.has("--accept")), lines(moved, notes));
        } catch (IllegalArgumentException unreadable) {
            throw VerbException.wrongCall(String.valueOf(unreadable.getMessage()));
        }
    }

    private static Map<String, Object> json(List<Trial.Plate> moved, List<String> notes, boolean accepted) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("plates", moved.stream().map(WhatIfVerb::plate).toList());
        json.put("notes", notes);
        json.put("accepted", accepted);
        return json;
    }

    private static Map<String, Object> plate(Trial.Plate plate) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("recipe", plate.recipe());
        json.put("now", figures(plate.now()));
        json.put("then", figures(plate.then()));
        json.put("change", CostJson.amount(plate.change()));
        json.put("contributionChange", CostJson.amount(plate.contributionChange()));
        json.put("lowerBound", plate.lowerBound());
        return json;
    }

    private static Map<String, Object> figures(PlateCost cost) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("plateCost", CostJson.amount(cost.cost()));
        json.put("netPrice", CostJson.amount(cost.net()));
        CostJson.put(json, "foodCostPercent", cost.foodCostPercent().map(BigDecimal::toPlainString));
        json.put("contribution", CostJson.amount(cost.contribution()));
        json.put("overTarget", cost.overTarget());
        return json;
    }

    private List<String> lines(List<Trial.Plate> moved, List<String> notes) {
        List<String> lines = new ArrayList<>();
        TextTable table = new TextTable(
                "Plate", ">Cost now", ">Then", ">Change", ">Food cost %", ">Then", ">Contribution", ">Then", "");
        moved.forEach(plate -> table.row(
                items.name(plate.recipe()),
                cents(plate.now().cost()),
                cents(plate.then().cost()),
                cents(plate.change()),
                percent(plate.now()),
                percent(plate.then()),
                cents(plate.now().contribution()),
                cents(plate.then().contribution()),
                (plate.lowerBound() ? "at least" : "")
                        + (plate.then().overTarget() && !plate.now().overTarget() ? " above its target then" : "")));
        lines.addAll(moved.isEmpty() ? List.of("No plate would change.") : table.lines());
        notes.forEach(note -> lines.add("Look: " + note));
        return lines;
    }

    private static String percent(PlateCost cost) {
        return cost.foodCostPercent().map(BigDecimal::toPlainString).orElse("");
    }

    private static String cents(Money money) {
        return money.rounded().toString();
    }
}
