package etamine.ingredients.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Allergens and ways of eating, row by row. */
class IngredientAllergensTest extends CeleriacKitchen {
    @Test
    void showsUnknownAllergensAsUnknown() {
        assertThat(model.rows().get(0).allergens()).isEqualTo("unknown");
        allergen("celery", "contains", "");
        assertThat(model.rows().get(0).allergens()).isEqualTo("celery; rest unknown");
        model.save("celeriac", AllergenText.known(true));
        assertThat(model.rows().get(0).allergens()).isEqualTo("celery");
        allergen("celery", "", "");
        assertThat(model.rows().get(0).allergens()).isEqualTo("none listed");
    }

    @Test
    void showsEveryUsualAllergenInThreeStatesAndUnderTheKitchensOwnWord() {
        allergen("soya", "contains", "");
        allergen("fish", "may", "hake");
        allergen("lupini", "may contain", "");
        List<List<String>> rows = AllergenText.rows(now().item().allergens());

        assertThat(rows).hasSize(15);
        assertThat(rows)
                .contains(
                        List.of("soya", "contains", ""),
                        List.of("fish", "may contain", "hake"),
                        List.of("lupini", "may contain", ""),
                        List.of("milk", "unknown", ""))
                .doesNotContain(List.of("soy", "unknown", ""));
        model.save("celeriac", AllergenText.known(true));
        assertThat(AllergenText.rows(now().item().allergens())).contains(List.of("milk", "no", ""));
    }

    @Test
    void saysThatNothingIsAbsentBeforeBothListsAreEstablished() {
        assertThat(AllergenText.row(now().item().allergens(), 0, List.of("gluten", "no", "")))
                .isInstanceOfSatisfying(
                        Attempt.Bad.class, bad -> assertThat(bad.sentence()).contains("all is written here"));
        assertThat(AllergenText.row(now().item().allergens(), 0, List.of("gluten", "perhaps", "")))
                .isInstanceOf(Attempt.Bad.class);
    }

    @Test
    void readsWaysOfEatingInThreeStates() {
        assertThat(DietText.rows(now().item().diet()))
                .containsExactly(List.of("vegetarian", "unknown"), List.of("vegan", "unknown"));
        save(DietText.row(now().item().diet(), 0, List.of("vegetarian", "suits")));
        save(DietText.row(now().item().diet(), 1, List.of("vegan", "does not")));
        save(DietText.row(now().item().diet(), 2, List.of("Halal", "suits")));

        assertThat(DietText.rows(now().item().diet()))
                .containsExactly(
                        List.of("vegetarian", "suits"), List.of("vegan", "does not"), List.of("halal", "suits"));
        save(DietText.row(now().item().diet(), 2, List.of("", "")));
        assertThat(DietText.rows(now().item().diet())).hasSize(2);
    }

    private void allergen(String word, String state, String name) {
        List<List<String>> rows = AllergenText.rows(now().item().allergens());
        int row = 0;
        while (row < rows.size() && !rows.get(row).get(0).equals(word)) {
            row++;
        }
        save(AllergenText.row(now().item().allergens(), row, List.of(word, state, name)));
    }
}
