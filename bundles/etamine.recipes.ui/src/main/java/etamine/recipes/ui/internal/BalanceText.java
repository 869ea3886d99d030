package etamine.recipes.ui.internal;

import etamine.measures.Quantity;
import etamine.recipes.MassBalance;
import java.util.ArrayList;
import java.util.List;

/** What goes into a batch against what comes out, in a sentence. */
final class BalanceText {
    private final RecipesModel model;

    BalanceText(RecipesModel model) {
        this.model = model;
    }

    String of(MassBalance balance) {
        if (balance.inputs().isEmpty()) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        parts.add("Bought " + model.text(balance.bought()));
        add(parts, "trimmed away ", balance.trim());
        add(parts, "water taken up ", balance.added());
        balance.lost().ifPresent(lost -> parts.add(lost(balance, lost)));
        if (balance.complete() || balance.out().signum() > 0) {
            parts.add("comes out " + model.text(balance.out()));
        }
        String sentence = String.join(", ", parts) + ".";
        return balance.complete()
                ? sentence
                : sentence + " Not weighed: " + balance.unweighed().get(0);
    }

    private void add(List<String> parts, String words, Quantity quantity) {
        if (quantity.signum() > 0) {
            parts.add(words + model.text(quantity));
        }
    }

    private String lost(MassBalance balance, Quantity lost) {
        if (lost.signum() < 0) {
            return model.text(lost.negate()) + " more out than in";
        }
        String share =
                balance.lostShare().map(part -> " (" + Percent.of(part) + ")").orElse("");
        return "lost in the making " + model.text(lost) + share;
    }
}
