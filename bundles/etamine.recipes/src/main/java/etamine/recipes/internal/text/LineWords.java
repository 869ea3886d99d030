package etamine.recipes.internal.text;

import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.measures.QuantityText;
import etamine.recipes.internal.ItemView;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** The lines of a recipe in words, with amounts as they are kept. */
public record LineWords(ItemView items) {

    public String name(String item) {
        return items.name(item);
    }

    public String use(Use use) {
        StringBuilder text = new StringBuilder(QuantityText.formatExact(use.quantity()))
                .append(' ')
                .append(name(use.item()));
        use.as().ifPresent(as -> text.append(", ").append(as));
        use.substitutes().forEach(other -> text.append(" or ").append(name(other)));
        return text.append(' ').append(use.basis()).toString();
    }

    public String make(Make make) {
        String text = QuantityText.formatExact(make.quantity()) + " " + name(make.item());
        String credit = make.credit().map(price -> ", credited at " + price).orElse("");
        return text
                + credit
                + make.marketValue().map(price -> ", worth " + price).orElse("");
    }

    /** Everything about a step but its text. */
    public static String facts(Step step) {
        List<String> facts = new ArrayList<>();
        time(facts, step.hands(), " hands");
        time(facts, step.unattended(), " by itself");
        word(facts, step.temperature());
        word(facts, step.equipment());
        word(facts, step.station());
        time(facts, step.holds(), " it holds");
        if (!step.after().isEmpty()) {
            facts.add("after " + String.join(", ", step.after()));
        }
        return String.join(", ", facts);
    }

    private static void time(List<String> facts, Duration time, String what) {
        if (!time.isZero()) {
            facts.add(minutes(time) + what);
        }
    }

    private static void word(List<String> facts, String word) {
        if (!word.isEmpty()) {
            facts.add(word);
        }
    }

    static String minutes(Duration time) {
        long days = time.toDays();
        long minutes = time.toMinutes();
        if (days > 0 && minutes % (24 * 60) == 0) {
            return days + (days == 1 ? " day" : " days");
        }
        return minutes >= 120
                ? minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min")
                : minutes + " min";
    }
}
