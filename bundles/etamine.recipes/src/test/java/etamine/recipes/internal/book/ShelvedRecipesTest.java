package etamine.recipes.internal.book;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Problem;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.recipes.Change;
import etamine.recipes.internal.Range;
import etamine.recipes.internal.rule.RecipeCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ShelvedRecipesTest {
    private final Range range = new Range();

    private static Recipe with(Recipe recipe, Use... uses) {
        return new Recipe(
                recipe.id(),
                recipe.name(),
                recipe.kind(),
                List.of(uses),
                recipe.makes(),
                recipe.portion(),
                recipe.keeps(),
                recipe.tested(),
                recipe.steps(),
                recipe.menu(),
                recipe.notes());
    }

    private static Use use(String item, String quantity) {
        return new Use(item, Quantity.parse(quantity), Optional.empty(), Basis.AP);
    }

    private Recipe added(String name, Kind kind, Use... uses) {
        Recipe recipe = with(range.writing.start(name, kind), uses);
        assertThat(range.writing.save(recipe, 0)).isInstanceOf(Change.Done.class);
        return recipe;
    }

    @Test
    void startsARecipeThatCanBeSavedAtOnce() {
        Recipe plate = added("Crème brûlée", Kind.PLATE);

        assertThat(plate.id()).isEqualTo("creme-brulee");
        assertThat(plate.makes())
                .hasToString(
                        "[Make[item=creme-brulee, quantity=1 portion, credit=Optional.empty, marketValue=Optional.empty]]");
        assertThat(range.book.history().undoable()).contains("Add Crème brûlée");
        assertThat(range.writing.start("Crème brûlée", Kind.COMPONENT).id()).isEqualTo("creme-brulee-2");
    }

    @Test
    void keepsHalfDoneWorkAndShowsWhatIsMissing() {
        Recipe soup = added("Soup", Kind.COMPONENT, use("turnip", "1 kg"));

        assertThat(range.writing.problems(soup)).extracting(Problem::code).containsExactly("unknown-item");
        assertThat(range.recipe("soup")).isEqualTo(soup);
    }

    @Test
    void refusesALoopWithItsPathAndWritesNothing() {
        added("Stock", Kind.COMPONENT);
        Recipe jus = added("Jus", Kind.COMPONENT, use("stock", "1 kg"));
        long before = range.book.revision();

        assertThat(range.writing.save(with(range.recipe("stock"), use("jus", "1 kg")), 1))
                .isInstanceOfSatisfying(
                        Change.Refused.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::text)
                                .anySatisfy(text -> assertThat(text).contains("Stock -> Jus -> Stock")));
        assertThat(range.book.revision()).isEqualTo(before);
        assertThat(range.recipe("jus")).isEqualTo(jus);
    }

    @Test
    void refusesToRemoveWhatAnotherRecipeNeeds() {
        added("Stock", Kind.COMPONENT);
        added("Jus", Kind.COMPONENT, use("stock", "1 kg"));

        assertThat(range.writing.remove("stock"))
                .isInstanceOfSatisfying(
                        Change.Refused.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::text)
                                .containsExactly("What Stock makes is used in Jus. Take it out of there first."));
        assertThat(range.writing.remove("jus")).isEqualTo(new Change.Done("jus", 0));
        assertThat(range.writing.remove("stock")).isEqualTo(new Change.Done("stock", 0));
    }

    @Test
    void copiesWhatARecipeMakesUnderTheNewName() {
        range.item("cream", "l");
        Recipe soup = added("Soup", Kind.COMPONENT, use("cream", "1 l"));

        assertThat(range.writing.copy("soup", "Soup for banquets")).isEqualTo(new Change.Done("soup-for-banquets", 1));
        Recipe copy = range.recipe("soup-for-banquets");
        assertThat(copy.uses()).isEqualTo(soup.uses());
        assertThat(copy.makes().get(0).item()).isEqualTo("soup-for-banquets");
        assertThat(copy.tested()).isZero();
    }

    @Test
    void doubtsMoreOutThanIn() {
        range.item("rice", "kg");
        Recipe rice = added("Boiled rice", Kind.COMPONENT, use("rice", "400 g"));

        assertThat(range.writing.problems(rice)).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("mass-balance");
            assertThat(problem.text()).contains("makes 1 kg out of 400 g").contains("water");
        });
        range.item("water", "kg");
        assertThat(range.writing.problems(with(rice, use("rice", "400 g"), use("water", "600 g"))))
                .isEmpty();
    }

    @Test
    void doesNotDoubtWhatItCannotWeigh() {
        range.item("rice", "kg");
        range.item("water", "l");
        Recipe rice = added("Boiled rice", Kind.COMPONENT, use("rice", "100 g"), use("water", "1 ml"));

        assertThat(range.writing.problems(rice)).isEmpty();
    }

    @Test
    void keepsUnknownMembersThroughAnEdit() {
        range.item("cream", "l");
        range.load("""
                {"id": "soup", "name": "Soup", "kind": "component", "colour": "white",
                 "uses": [{"item": "cream", "quantity": "1/2 l", "brand": "any"}],
                 "makes": [{"item": "soup", "quantity": "1 kg"}]}""");
        List<Use> lines = new ArrayList<>(List.of(use("cream", "2 l")));
        lines.addAll(range.recipe("soup").uses());

        range.writing.save(with(range.recipe("soup"), lines.toArray(Use[]::new)), 1);

        assertThat(range.section.dump()).isEqualTo(Range.json("""
                [{"id": "soup", "name": "Soup", "kind": "component", "colour": "white",
                  "uses": [{"item": "cream", "quantity": "2 l", "basis": "AP"},
                           {"item": "cream", "quantity": "1/2 l", "brand": "any"}],
                  "makes": [{"item": "soup", "quantity": "1 kg"}]}]"""));
    }

    @Test
    void findsEverythingOnceWhenTheWholeBookIsChecked() {
        added("Soup", Kind.COMPONENT, use("turnip", "1 kg"));
        range.book.write("Damage", transaction -> transaction.save("recipes", "odd", 0, "{\"id\": \"odd\"}"));

        assertThat(new RecipeCheck(range.shelf, range::known, range.made).check())
                .extracting(Problem::code, Problem::where)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("unreadable", "recipes/odd"),
                        org.assertj.core.groups.Tuple.tuple("unknown-item", "recipes/soup"));
    }
}
