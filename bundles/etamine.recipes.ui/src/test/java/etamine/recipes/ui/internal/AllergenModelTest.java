package etamine.recipes.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import etamine.base.Explanation;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.recipes.AllergenState;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class AllergenModelTest {
    private final Stove stove = new Stove();
    private final AllergenModel model = new AllergenModel(stove.ware);

    @BeforeEach
    void plate() {
        stove.model.add("Purée", Kind.COMPONENT);
        stove.model.add("Plate of roots", Kind.PLATE);
        stove.model.save("puree", recipe -> recipe.withUses(List.of(use("celeriac"), use("cream"))));
        stove.model.save("plate-of-roots", recipe -> recipe.withUses(List.of(use("puree"))));
    }

    private static Use use(String item) {
        return new Use(item, Quantity.parse("100 g"), Optional.empty(), Basis.AP);
    }

    private Recipe find() {
        return stove.recipes.find("plate-of-roots").orElseThrow();
    }

    private AllergenLine line(String what) {
        return model.lines(find(), DeclarationList.EU).stream()
                .filter(line -> line.what().equals(what))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void saysWhyAPlateContainsSomething() {
        assertThat(line("Celery"))
                .extracting(AllergenLine::state, AllergenLine::why)
                .containsExactly("contains", "Purée → Celeriac");
    }

    @Test
    void saysWhatIsUnknownAndWhatToDo() {
        assertThat(line("Peanuts").state()).isEqualTo("unknown");
        assertThat(line("Everything else"))
                .extracting(AllergenLine::state, AllergenLine::why, AllergenLine::ask)
                .containsExactly("unknown", "Purée → Cream", "Establish the allergens of 1 ingredient.");
    }

    @Test
    void showsWhatTheListDoesNotKnowAsSuch() {
        assertThat(model.lines(find(), DeclarationList.US))
                .extracting(AllergenLine::what, AllergenLine::ask)
                .contains(tuple("celery", "Not on this list."));
    }

    @Test
    void putsTheCautionBesideEveryStory() {
        Explanation story = line("Celery").story();
        assertThat(story.source()).isEqualTo(Allergens.CAUTION);
        assertThat(story.parts().get(0).parts())
                .extracting(Explanation::source)
                .containsExactly("Plate of roots → Purée → Celeriac");
    }

    @Test
    void putsOnlyPlatesAndDrinksOnTheMenu() {
        List<MenuLine> menu = model.menu(DeclarationList.EU);
        assertThat(menu).extracting(MenuLine::name).containsExactly("Plate of roots");
        assertThat(menu.get(0).state("celery")).isEqualTo(AllergenState.CONTAINS);
        assertThat(menu.get(0).state("milk")).isEqualTo(AllergenState.UNKNOWN);
        stove.model.save(
                "plate-of-roots",
                recipe -> recipe.withStanding(recipe.standing().withArchived(true)));
        assertThat(model.menu(DeclarationList.EU)).isEmpty();
    }
}
