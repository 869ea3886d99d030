package etamine.recipes.internal.rule;

import etamine.kitchen.recipe.BatchTest;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.measures.Dimension;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.RecipeGraph;
import etamine.recipes.internal.form.LinePointers;
import etamine.recipes.internal.weight.MeasuredShares;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What a recipe names beside its lines: stand-ins, drinks, steps of its own, things its tests weighed. Used once. */
public final class LinkRules {
    private final Recipe recipe;
    private final RecipeGraph graph;
    private final ItemView items;
    private final List<Finding> findings = new ArrayList<>();

    private LinkRules(Recipe recipe, RecipeGraph graph, ItemView items) {
        this.recipe = recipe;
        this.graph = graph;
        this.items = items;
    }

    static List<Finding> of(Recipe recipe, RecipeGraph graph, ItemView items, LinePointers pointers) {
        LinkRules rules = new LinkRules(recipe, graph, items);
        for (int i = 0; i < recipe.uses().size(); i++) {
            rules.substitutes(recipe.uses().get(i), pointers.uses().get(i));
        }
        rules.steps();
        rules.drinks();
        rules.tests();
        return rules.findings;
    }

    private void substitutes(Use use, String pointer) {
        for (int i = 0; i < use.substitutes().size(); i++) {
            String id = use.substitutes().get(i);
            if (items.complete() && items.find(id).isEmpty()) {
                incomplete(
                        "unknown-item",
                        pointer + "/or/" + i,
                        "There is no item “" + id + "” to stand in for " + items.name(use.item())
                                + "; add it to the ingredients, or take it out here.");
            }
        }
    }

    private void steps() {
        Set<String> ids = recipe.steps().stream().map(Step::id).collect(Collectors.toSet());
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < recipe.steps().size(); i++) {
            Step step = recipe.steps().get(i);
            if (!seen.add(step.id())) {
                doubt("step-twice", "/steps/" + i + "/id", "Two steps are called “" + step.id() + "”; rename one.");
            }
            for (String earlier : step.after()) {
                if (!ids.contains(earlier)) {
                    doubt(
                            "unknown-step",
                            "/steps/" + i + "/after",
                            "Step “" + step.id() + "” waits for “" + earlier
                                    + "”, which is no step of this recipe; take it out or name another.");
                }
            }
        }
    }

    private void drinks() {
        for (int i = 0; i < recipe.drinks().size(); i++) {
            String drink = recipe.drinks().get(i).recipe();
            if (!graph.recipes().containsKey(drink)) {
                incomplete(
                        "unknown-drink",
                        "/drinks/" + i + "/recipe",
                        "There is no recipe “" + drink + "” to pour with it; write it, or take it out here.");
            }
        }
    }

    private void tests() {
        List<BatchTest> tests = recipe.standing().tests();
        for (int i = 0; i < tests.size(); i++) {
            for (String text : wrong(recipe, tests.get(i), items)) {
                doubt("batch-test", "/tests/" + i, "The test of " + tests.get(i).date() + ": " + text);
            }
        }
    }

    /** What is wrong with a test, each as a sentence. */
    public static List<String> wrong(Recipe recipe, BatchTest test, ItemView items) {
        List<String> wrong = new ArrayList<>();
        if (test.in().unit().dimension() != Dimension.MASS || test.in().signum() <= 0) {
            wrong.add("write the weight that went in, more than zero, such as 1.4 kg.");
        }
        if (test.out().isEmpty()) {
            wrong.add("write at least one thing that came out, with its weight.");
        }
        for (BatchTest.Weighed weighed : test.out()) {
            if (recipe.makes().stream().noneMatch(make -> make.item().equals(weighed.item()))) {
                wrong.add(recipe.name() + " does not make “" + items.name(weighed.item())
                        + "”; add it to what the recipe makes first.");
            } else if (MeasuredShares.weight(weighed, items).isEmpty()) {
                wrong.add("weigh " + items.name(weighed.item()) + "; an amount of " + weighed.quantity()
                        + " has no weight until its measures say what it weighs.");
            }
        }
        return wrong;
    }

    private void incomplete(String code, String pointer, String text) {
        findings.add(new Finding(code, Finding.Grade.INCOMPLETE, pointer, text));
    }

    private void doubt(String code, String pointer, String text) {
        findings.add(new Finding(code, Finding.Grade.DOUBTFUL, pointer, text));
    }
}
