package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Difference;
import etamine.recipes.Revision;
import etamine.recipes.Revisions;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The revisions of a recipe and what differs between two, without widgets. */
final class HistoryModel {
    /** Nothing chosen. */
    static final Comparison NOTHING =
            new Comparison("Choose a revision to compare it with now, or two.", List.of(), false);

    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.ENGLISH);

    private final Revisions revisions;
    private final RecipesModel model;

    /**
     * Two states beside each other.
     *
     * @param title which
     * @param rows what differs
     * @param restorable whether the older can be brought back
     */
    record Comparison(String title, List<DifferenceRow> rows, boolean restorable) {}

    HistoryModel(Revisions revisions, RecipesModel model) {
        this.revisions = revisions;
        this.model = model;
    }

    List<RevisionRow> rows(Recipe recipe) {
        ZoneId zone = model.zone();
        return revisions.of(recipe.id()).stream()
                .map(revision -> new RevisionRow(
                        revision.number(),
                        WHEN.format(revision.at().atZone(zone)),
                        revision.removed() ? revision.label() + " (removed)" : revision.label()))
                .toList();
    }

    /** One revision against the recipe as it is, or the older of two against the newer. */
    Comparison compare(Recipe now, List<Long> chosen) {
        if (chosen.isEmpty()) {
            return NOTHING;
        }
        List<Revision> all = revisions.of(now.id());
        long older = chosen.stream().mapToLong(Long::longValue).min().orElse(0);
        long newer = chosen.stream().mapToLong(Long::longValue).max().orElse(0);
        boolean two = chosen.size() > 1;
        Optional<Recipe> before = state(all, older);
        Optional<Recipe> after = two ? state(all, newer) : Optional.of(now);
        if (before.isEmpty() || after.isEmpty()) {
            return new Comparison("There is nothing to compare: it was removed then.", List.of(), false);
        }
        String title = "From revision " + older + (two ? " to revision " + newer : " to now");
        return new Comparison(
                title, rows(before.get(), after.get()), !two && !before.get().equals(now));
    }

    private static Optional<Recipe> state(List<Revision> all, long number) {
        return all.stream()
                .filter(revision -> revision.number() == number)
                .findFirst()
                .flatMap(Revision::recipe);
    }

    private List<DifferenceRow> rows(Recipe before, Recipe after) {
        List<DifferenceRow> rows = new ArrayList<>();
        for (Difference difference : revisions.between(before, after)) {
            rows.add(new DifferenceRow(
                    rows.size(), word(difference.what()), difference.where(), difference.before(), difference.after()));
        }
        return rows;
    }

    private static String word(Difference.What what) {
        return switch (what) {
            case ADDED -> "added";
            case REMOVED -> "taken out";
            case AMOUNT -> "amount";
            case TEXT -> "words";
            case CHANGED -> "changed";
            case MOVED -> "moved";
        };
    }
}
