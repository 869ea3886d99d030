package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.costing.Experiment;
import etamine.costing.Trial;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.recipe.Recipe;
import etamine.widgets.Choice;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is being tried and what it would come to. Nothing of it is in the book until it is accepted. */
final class WhatIfModel {
    private final CostingParts parts;
    private final Levers levers;
    private final Map<String, BigDecimal> values = new LinkedHashMap<>();

    WhatIfModel(CostingParts parts) {
        this.parts = parts;
        this.levers = new Levers(parts);
    }

    /** Everything that can be moved. */
    List<Choice> choices() {
        return levers.choices();
    }

    /** Puts a lever out at where it stands in the book; answers whether there is such a thing with a figure to move. */
    boolean add(String id) {
        Optional<Lever> lever = levers.find(id);
        lever.ifPresent(found -> values.putIfAbsent(id, found.range().start()));
        return lever.isPresent();
    }

    /** Puts out what is likely to be tried with a plate: its price and its lines. */
    void addPlate(String recipe) {
        parts.recipe(recipe).map(levers::ofRecipe).orElse(List.of()).forEach(choice -> add(choice.id()));
    }

    void move(String id, BigDecimal value) {
        values.computeIfPresent(id, (lever, before) -> value);
    }

    void remove(String id) {
        values.remove(id);
    }

    /** Forgets everything tried. */
    void discard() {
        values.clear();
    }

    BigDecimal value(String id) {
        return values.getOrDefault(id, BigDecimal.ZERO);
    }

    /** The levers that are out and still there, in the order they were put out. */
    List<Lever> out() {
        return values.keySet().stream().flatMap(id -> levers.find(id).stream()).toList();
    }

    /** The levers that stand elsewhere than in the book. */
    List<Lever> moved() {
        return out().stream()
                .filter(lever -> value(lever.id()).compareTo(lever.range().start()) != 0)
                .toList();
    }

    /** What is tried, as one experiment. */
    Experiment experiment() {
        Experiment experiment = Experiment.none();
        for (Lever lever : moved()) {
            experiment = lever.trial().apply(experiment, value(lever.id()));
        }
        return experiment;
    }

    /** Each change in words, as it will be written. */
    List<String> changes() {
        return moved().stream()
                .map(lever -> lever.name() + ": " + lever.said().apply(value(lever.id())))
                .toList();
    }

    /** What it would come to: the plates that move most first. */
    Outcome outcome() {
        Trial trial = parts.experiments().reckon(experiment());
        List<TrialRow> rows = trial.plates().stream()
                .map(plate -> new TrialRow(parts.recipeName(plate.recipe()), plate))
                .sorted(Comparator.comparing(
                                (TrialRow row) -> row.change().amount().abs())
                        .reversed()
                        .thenComparing(TrialRow::name))
                .toList();
        return new Outcome(rows, trial.notes());
    }

    /** Writes everything tried; answers what a person should know of it. */
    List<String> accept() {
        return parts.experiments().accept(experiment());
    }

    /** How one plate's figures move. */
    Explanation explain(TrialRow row) {
        Figures figures = parts.figures();
        PlateCost now = row.plate().now();
        PlateCost then = row.plate().then();
        List<Explanation> all = new ArrayList<>();
        all.add(Explanation.leaf("Cost now", figures.full(now.cost()), "as the book has it"));
        all.add(Explanation.leaf("Cost then", figures.full(then.cost()), "with what is tried"));
        all.add(Explanation.leaf("Change", Figures.change(row.change()) + "\u00a0" + figures.currency(), ""));
        all.add(Explanation.leaf(
                "Food cost",
                row.percentText(),
                row.plate().then().target().map(this::targetText).orElse("no target set")));
        all.add(Explanation.leaf("Contribution", row.contributionText(), "net price less cost"));
        changes().forEach(change -> all.add(Explanation.leaf(change, "", "tried, not in the book")));
        parts.costs().explain(row.id()).ifPresent(all::add);
        return Explanation.of(row.name(), figures.full(then.cost()), all).about(new Subject("cost", row.id()));
    }

    private String targetText(BigDecimal percent) {
        return "should not exceed " + Figures.percentAsWritten(percent);
    }

    /** The name of a recipe, for a button. */
    Optional<String> recipeName(String id) {
        return parts.recipe(id).map(Recipe::name);
    }

    /**
     * What everything tried comes to.
     *
     * @param rows the plates
     * @param notes what could not be tried
     */
    record Outcome(List<TrialRow> rows, List<String> notes) {

        /** The whole effect in a sentence or two. */
        String sentence(boolean anythingMoved) {
            if (!anythingMoved) {
                return "Nothing is moved: the figures are those of the book.";
            }
            long moved = rows.stream().filter(row -> row.plate().moved()).count();
            List<String> over = rows.stream()
                    .filter(TrialRow::newlyOver)
                    .map(TrialRow::name)
                    .toList();
            String plates = moved == 1 ? "1 plate moves" : moved + " of " + rows.size() + " plates move";
            String most = moved == 0
                    ? ""
                    : ", most of all " + rows.get(0).name() + " by "
                            + Figures.change(rows.get(0).change());
            String beyond =
                    over.isEmpty() ? "" : " Over its food-cost target because of it: " + String.join(", ", over) + ".";
            return plates + most + "." + beyond;
        }
    }
}
