package etamine.recipes.internal.linked;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.kitchen.recipe.Step;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** The work of a foreign recipe: one text, a list of texts or of HowToStep, in HowToSection or not. */
final class LdSteps {
    private static final int MOST = 200;

    private final List<Step> steps = new ArrayList<>();
    private final List<String> remarks;
    private String section = "";
    private boolean tooMany;

    private LdSteps(List<String> remarks) {
        this.remarks = remarks;
    }

    static List<Step> of(JsonNode instructions, List<String> remarks) {
        LdSteps reading = new LdSteps(remarks);
        reading.take(instructions);
        if (reading.tooMany) {
            remarks.add("It has more than " + MOST + " steps; those after are left out. Write them as a recipe of their"
                    + " own.");
        }
        return reading.steps;
    }

    private void take(JsonNode node) {
        if (node.isArray()) {
            node.forEach(this::take);
        } else if (node.has("itemListElement")) {
            section = LdWords.text(node.path("name"));
            take(node.path("itemListElement"));
        } else if (node.has("item") && !node.has("text")) {
            take(node.path("item"));
        } else {
            step(node);
        }
    }

    private void step(JsonNode node) {
        String text = LdWords.text(node);
        text.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(this::add);
        if (text.isEmpty() && node.isObject()) {
            remarks.add("A step is only named by reference, which is not followed; write it.");
        }
    }

    private void add(String text) {
        if (steps.size() >= MOST) {
            tooMany = true;
            return;
        }
        String said = section.isEmpty() ? text : section + ": " + text;
        section = "";
        String id = Integer.toString(steps.size() + 1);
        steps.add(new Step(id, said, Duration.ZERO, Duration.ZERO, "", List.of()));
    }
}
