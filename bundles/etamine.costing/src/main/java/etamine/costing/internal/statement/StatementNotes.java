package etamine.costing.internal.statement;

import etamine.base.Problem;
import etamine.costing.Statement;
import etamine.kitchen.covers.Diary;
import etamine.kitchen.item.Items;
import etamine.kitchen.stock.StockFlows;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a statement lacks or rests on, as sentences; used once. */
final class StatementNotes {
    private static final int NAMED = 6;

    private final Items items;
    private final List<String> notes = new ArrayList<>();

    StatementNotes(Items items) {
        this.items = items;
    }

    void without(
            @Nullable Diary diary,
            Optional<SoldPortions> sold,
            @Nullable StockFlows stock,
            Optional<Statement.Actual> actual) {
        if (diary == null) {
            notes.add("No installed module keeps sales, so what should have been used is not known.");
        } else if (sold.filter(found -> found.ideal().sold() > 0).isEmpty()) {
            notes.add("Nothing was sold on these days, so what should have been used is not known; note sales.");
        }
        if (stock == null) {
            notes.add("No installed module keeps stock, so opening, purchases and closing are not known.");
        } else if (actual.isEmpty()) {
            notes.add("Nothing was on the shelf and nothing moved on these days; count the shelf first.");
        }
        sold.ifPresent(this::rests);
    }

    private void rests(SoldPortions sold) {
        if (!sold.leftOut().isEmpty()) {
            notes.add("Sold, but without a cost, so they are left out: " + names(sold.leftOut()) + ".");
        }
        if (sold.ideal().lowerBound()) {
            notes.add("A price is missing below what was sold: it should have cost at least that.");
        }
    }

    void doubtful(ShelfFigures shelf) {
        List<String> doubtful = shelf.doubtful();
        if (!doubtful.isEmpty()) {
            notes.add("Of these a cost or a measure is missing, so that they are not wholly in the figures: "
                    + names(doubtful) + ".");
        }
    }

    void unfollowed(List<Problem> problems) {
        problems.stream()
                .limit(NAMED)
                .forEach(problem -> notes.add("Could not be followed through the recipes: " + problem.text()));
    }

    void apart(List<String> apart) {
        if (!apart.isEmpty()) {
            notes.add("Recipes and shelf measure these in units that nothing links; add a measure: " + names(apart)
                    + ".");
        }
    }

    void unpriced(List<Statement.Variance> variances) {
        List<String> unpriced = variances.stream()
                .filter(line -> line.idealCost().isEmpty())
                .map(Statement.Variance::item)
                .toList();
        if (!unpriced.isEmpty()) {
            notes.add("These have no price today, so what they should have cost counts as nothing: " + names(unpriced)
                    + ".");
        }
    }

    private String names(List<String> ids) {
        List<String> named = ids.stream().limit(NAMED).map(items::name).toList();
        String more = ids.size() > NAMED ? " and " + (ids.size() - NAMED) + " more" : "";
        return String.join(", ", named) + more;
    }

    List<String> all() {
        return notes;
    }
}
