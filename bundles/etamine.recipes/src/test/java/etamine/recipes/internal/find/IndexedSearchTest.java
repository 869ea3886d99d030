package etamine.recipes.internal.find;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.recipe.Kind;
import etamine.recipes.RecipeSearch.Hit;
import etamine.recipes.RecipeSearch.Place;
import etamine.recipes.RecipeSearch.Wanted;
import etamine.recipes.internal.Range;
import etamine.recipes.internal.allergen.RolledAllergens;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class IndexedSearchTest {
    private final Range range = new Range();
    private final IndexedSearch search =
            new IndexedSearch(range.shelf, range::known, range.made, new RolledAllergens(range::known, range.made));

    @BeforeEach
    void kitchen() {
        range.allergens("celeriac", Set.of("celery"), Set.of(), true);
        range.allergens("rice", Set.of(), Set.of(), true);
        range.allergens("spice mix", Set.of(), Set.of(), false);
        range.load("""
                {"id": "puree", "name": "Crème of roots", "kind": "component", "station": "sauce", "tested": 2,
                 "uses": [{"item": "celeriac", "quantity": "1 kg"}], "makes": [{"item": "puree", "quantity": "1 kg"}],
                 "steps": [{"id": "a", "text": "Simmer quietly.", "equipment": "hob ring"}]}""", """
                {"id": "rice", "name": "Boiled rice", "kind": "component",
                 "uses": [{"item": "rice", "quantity": "1 kg"}], "makes": [{"item": "cooked-rice", "quantity": "1 kg"}],
                 "steps": [{"id": "a", "text": "Boil.", "station": "Grill"}]}""", """
                {"id": "curry", "name": "Curry", "kind": "plate",
                 "uses": [{"item": "spice mix", "quantity": "1 kg"}, {"item": "puree", "quantity": "1 kg"}],
                 "makes": [{"item": "curry", "quantity": "1 portion"}], "notes": "Celery leaves on top."}""", """
                {"id": "old", "name": "Old rice", "archived": true, "makes": [{"item": "old", "quantity": "1 kg"}]}""");
    }

    private List<String> ids(Wanted wanted) {
        return search.find(wanted).stream().map(Hit::recipe).toList();
    }

    private static Wanted allergens(Set<String> contains, Set<String> free) {
        return new Wanted("", Set.of(), contains, free, Optional.empty(), "", false, false, 10);
    }

    @Test
    void findsByNameThenByWhatIsInItThenByItsWork() {
        assertThat(ids(Wanted.words("creme", 10))).containsExactly("puree", "curry");
        assertThat(ids(Wanted.words("cel", 10))).containsExactly("puree", "curry");
        assertThat(search.find(Wanted.words("cel", 10))).extracting(Hit::place).containsExactly(Place.ITEM, Place.TEXT);
        assertThat(search.find(Wanted.words("quiet", 10)).get(0).excerpt()).isEqualTo("simmer quietly.");
        assertThat(ids(Wanted.words("roots simmer", 10))).containsExactly("puree");
        assertThat(ids(Wanted.words("roots turnip", 10))).isEmpty();
        assertThat(ids(Wanted.words("", 2))).hasSize(2);
    }

    @Test
    void leavesOutWhatIsPutAwayUnlessAskedForIt() {
        assertThat(ids(Wanted.words("rice", 10))).containsExactly("rice");
        assertThat(ids(new Wanted("rice", Set.of(), Set.of(), Set.of(), Optional.empty(), "", false, true, 10)))
                .containsExactly("old");
    }

    @Test
    void neverTakesUnknownAllergensForAbsent() {
        assertThat(ids(allergens(Set.of("celery"), Set.of()))).containsExactly("puree", "curry");
        assertThat(ids(allergens(Set.of(), Set.of("fish")))).containsExactly("rice", "puree");
        assertThat(ids(allergens(Set.of(), Set.of("celery")))).containsExactly("rice");
    }

    @Test
    void narrowsByKindStationAndTests() {
        assertThat(ids(new Wanted("", Set.of(Kind.PLATE), Set.of(), Set.of(), Optional.empty(), "", false, false, 9)))
                .containsExactly("curry");
        assertThat(ids(new Wanted("", Set.of(), Set.of(), Set.of(), Optional.empty(), "grill", false, false, 9)))
                .containsExactly("rice");
        assertThat(ids(new Wanted("", Set.of(), Set.of(), Set.of(), Optional.empty(), "", true, false, 9)))
                .containsExactly("rice", "curry");
        assertThat(search.stations()).containsExactly("Grill", "sauce");
    }

    @Test
    void seesChangesAtOnce() {
        assertThat(ids(Wanted.words("spoon", 10))).isEmpty();
        range.writing.save(range.recipe("rice").withNotes("Serve with a spoon."), 1);
        range.item("celeriac", "kg");

        assertThat(ids(Wanted.words("spoon", 10))).containsExactly("rice");
        range.writing.archive("rice", true);
        assertThat(ids(Wanted.words("spoon", 10))).isEmpty();
    }
}
