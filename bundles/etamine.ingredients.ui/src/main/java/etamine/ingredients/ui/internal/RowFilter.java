package etamine.ingredients.ui.internal;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Which items the list shows. */
enum RowFilter {
    ALL("Everything", row -> true),
    LISTED("Ingredients", row -> !row.made()),
    MADE("Made here", IngredientRow::made),
    ALLERGENS("Allergens not established", row -> !row.allergensKnown()),
    UNPRICED("Without a written price", row -> !row.made() && row.price().isEmpty()),
    UNUSED("In no recipe", row -> row.uses() == 0);

    private final String label;
    private final Predicate<IngredientRow> keeps;

    RowFilter(String label, Predicate<IngredientRow> keeps) {
        this.label = label;
        this.keeps = keeps;
    }

    static String[] labels() {
        return Stream.of(values()).map(filter -> filter.label).toArray(String[]::new);
    }

    List<IngredientRow> of(List<IngredientRow> rows) {
        return this == ALL ? rows : rows.stream().filter(keeps).toList();
    }
}
