package etamine.ingredients.ui.internal;

import etamine.base.Problem;
import etamine.ingredients.Change;
import etamine.ingredients.IngredientMerges;
import etamine.ingredients.IngredientMerges.Likeness;
import etamine.ingredients.IngredientMerges.Preview;
import etamine.kitchen.item.ItemMentions.Mention;
import etamine.widgets.Choice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What the merge dialog shows and does, without widgets. Safe on any thread. */
final class MergeModel {
    private static final int SHOWN = 200;

    private final Known known;

    MergeModel(Known known) {
        this.known = known;
    }

    /**
     * A pair that may be the same.
     *
     * @param stays the id of the likely survivor
     * @param goes the id of the other
     * @param stayName its name
     * @param goName its name
     * @param why what makes them alike
     */
    record Pair(String stays, String goes, String stayName, String goName, String why) {
        String key() {
            return stays + "/" + goes;
        }
    }

    List<Pair> pairs() {
        return known.merges().duplicates().stream().map(MergeModel::pair).toList();
    }

    private static Pair pair(Likeness likeness) {
        return new Pair(
                likeness.one().id(),
                likeness.other().id(),
                likeness.one().item().name(),
                likeness.other().item().name(),
                likeness.why());
    }

    /** Every listed ingredient; the id tells two of one name apart. */
    List<Choice> choices() {
        return known.list().all().values().stream()
                .map(ingredient -> new Choice(ingredient.id(), ingredient.item().name() + " (" + ingredient.id() + ")"))
                .sorted(Comparator.comparing(Choice::label, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    /**
     * What a merge would do, for reading.
     *
     * @param possible whether it can be done
     * @param text why not, or what it rewrites
     */
    record Told(boolean possible, String text) {}

    Told tell(String goes, String stays) {
        Preview preview = known.merges().preview(goes, stays);
        if (!preview.problems().isEmpty()) {
            return new Told(
                    false,
                    String.join(
                            "\n", preview.problems().stream().map(Problem::text).toList()));
        }
        List<String> lines = new ArrayList<>();
        int places = preview.mentions().size();
        lines.add(
                places == 0 ? "Nothing else names it." : "Rewrites " + places + (places == 1 ? " place:" : " places:"));
        preview.mentions().stream()
                .limit(SHOWN)
                .map(Mention::text)
                .map(text -> "  " + text)
                .forEach(lines::add);
        if (places > SHOWN) {
            lines.add("  and " + (places - SHOWN) + " more");
        }
        lines.addAll(preview.remarks());
        lines.add("Undo takes all of it back.");
        return new Told(true, String.join("\n", lines));
    }

    Change merge(String goes, String stays) {
        IngredientMerges merges = known.merges();
        return merges.merge(goes, stays);
    }
}
