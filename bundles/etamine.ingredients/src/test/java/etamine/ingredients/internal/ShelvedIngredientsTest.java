package etamine.ingredients.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Problem;
import etamine.ingredients.Change;
import etamine.ingredients.Ingredient;
import etamine.ingredients.YieldRecord;
import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.recipe.Requirement;
import etamine.measures.Equivalence;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import etamine.storage.BookException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ShelvedIngredientsTest {
    private final Pantry pantry = new Pantry();

    /** Recipes of which one uses everything. */
    private static final class OneUser implements Recipes {
        private final Recipe soup = new Recipe(
                "soup",
                "Soup",
                Kind.COMPONENT,
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                0,
                List.of(),
                Optional.empty(),
                "");

        @Override
        public Map<String, Recipe> all() {
            return Map.of("soup", soup);
        }

        @Override
        public Optional<Recipe> find(String id) {
            return Optional.of(soup);
        }

        @Override
        public List<Recipe> inOrder() {
            return List.of(soup);
        }

        @Override
        public Optional<Recipe> maker(String item) {
            return Optional.empty();
        }

        @Override
        public List<Recipe> usersOf(String item) {
            return List.of(soup);
        }

        @Override
        public Requirement require(Map<String, Quantity> wanted, Map<String, Quantity> available) {
            return new Requirement(Map.of(), Map.of(), Map.of(), List.of());
        }
    }

    private Ingredient saved(String id, String name) {
        Ingredient ingredient = Ingredient.named(id, name, Unit.KG);
        assertThat(pantry.list.save(ingredient, 0)).isEqualTo(new Change.Done(1));
        return ingredient;
    }

    @Test
    void savesUnderALabelThatSaysWhatChanged() {
        Ingredient celeriac = saved("celeriac", "Celeriac");
        assertThat(pantry.book.history().undoable()).contains("Add Celeriac");

        pantry.list.save(celeriac.with(item -> item.withPrice(Optional.of(UnitPrice.of("2.10", "1 kg")))), 1);
        assertThat(pantry.book.history().undoable()).contains("Change price of Celeriac");

        pantry.list.save(pantry.list.find("celeriac").orElseThrow().with(item -> item.withName("Celery root")), 2);
        assertThat(pantry.book.history().undoable()).contains("Rename Celeriac to Celery root");
    }

    @Test
    void takesBackOneEditWithOneUndo() {
        Ingredient celeriac = saved("celeriac", "Celeriac");
        pantry.list.save(celeriac.with(item -> item.withStorage("chilled").withGroup("Vegetables")), 1);

        pantry.book.history().undo();

        assertThat(pantry.list.find("celeriac")).contains(celeriac);
    }

    @Test
    void refusesToSaveOverSomebodyElsesEdit() {
        Ingredient celeriac = saved("celeriac", "Celeriac");
        pantry.list.save(celeriac.with(item -> item.withStorage("chilled")), 1);

        assertThatThrownBy(() -> pantry.list.save(celeriac.with(item -> item.withGroup("Roots")), 1))
                .isInstanceOf(BookException.class);
    }

    @Test
    void keepsUnknownMembersThroughAnEdit() {
        pantry.load("""
                [{"id": "celeriac", "name": "Celeriac", "countIn": "kg", "origin": {"farm": "north"},
                  "preparations": [{"name": "peeled", "yield": "3/4", "knife": "long"}],
                  "price": {"amount": "2.10", "per": "1 kg"}}]
                """);
        Ingredient celeriac = pantry.list.find("celeriac").orElseThrow();
        Preparation diced = new Preparation("diced", Ratio.parse("0.7"), List.of());
        Preparation peeled = new Preparation("peeled", Ratio.parse("0.8"), List.of());

        pantry.list.save(
                celeriac.withPreparations(
                        List.of(diced, peeled), Map.of("diced", YieldRecord.NONE.withNote("own test"))),
                1);

        assertThat(pantry.section.dump()).isEqualTo(Pantry.json("""
                [{"id": "celeriac", "name": "Celeriac", "countIn": "kg", "origin": {"farm": "north"},
                  "preparations": [{"name": "diced", "yield": "0.7", "note": "own test"},
                                   {"name": "peeled", "yield": "0.8", "knife": "long"}],
                  "price": {"amount": "2.10", "per": "1 kg"}}]
                """));
    }

    @Test
    void keepsTheSpellingOfMembersThatDidNotChange() {
        pantry.load("""
                [{"id": "egg", "name": "Egg", "countIn": "ea", "measures": [{"of": "1 ea", "is": "1/2 dl"}]}]
                """);

        pantry.list.save(pantry.list.find("egg").orElseThrow().with(item -> item.withName("Eggs")), 1);

        assertThat(pantry.section.dump().at("/0/measures/0/is").asText()).isEqualTo("1/2 dl");
    }

    @Test
    void refusesAnIngredientWithoutANameOrWithANegativePrice() {
        Ingredient bad = Ingredient.named("salt", " ", Unit.KG)
                .with(item -> item.withPrice(Optional.of(UnitPrice.of("-1", "1 kg"))));

        assertThat(pantry.list.save(bad, 0))
                .isInstanceOfSatisfying(
                        Change.Refused.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::code)
                                .containsExactly("no-name", "negative-price"));
        assertThat(pantry.list.all()).isEmpty();
        assertThat(pantry.book.history().undoable()).isEmpty();
    }

    @Test
    void refusesToRemoveWhatRecipesUseAndSaysWhere() {
        saved("celeriac", "Celeriac");
        OneUser recipes = new OneUser();
        pantry.list.setRecipes(recipes);

        assertThat(pantry.list.remove("celeriac"))
                .isInstanceOfSatisfying(
                        Change.Refused.class,
                        refused -> assertThat(refused.problems())
                                .extracting(Problem::text)
                                .containsExactly("Celeriac is used in Soup. Take it out of there first."));

        pantry.list.unsetRecipes(recipes);
        assertThat(pantry.list.remove("celeriac")).isEqualTo(new Change.Done(0));
        assertThat(pantry.list.all()).isEmpty();
        pantry.book.history().undo();
        assertThat(pantry.list.find("celeriac")).isPresent();
    }

    @Test
    void makesAnIdentifierOutOfAName() {
        saved("creme-fraiche", "Crème fraîche");

        assertThat(pantry.list.freshId("Crème fraîche")).isEqualTo("creme-fraiche-2");
        assertThat(pantry.list.freshId("  Sel, gros ")).isEqualTo("sel-gros");
        assertThat(pantry.list.freshId("???")).isEqualTo("ingredient");
    }

    @Test
    void doubtsMeasuresThatContradictOneAnother() {
        Ingredient almonds = Ingredient.named("almonds", "Almonds", Unit.KG)
                .with(item -> item.withMeasures(List.of(
                        new Equivalence(Quantity.parse("1 cup"), Quantity.parse("143 g")),
                        new Equivalence(Quantity.parse("1 l"), Quantity.parse("389 g")))));

        // USDA SR28 (2015), WEIGHT, row 12061: 143 g a cup whole, 92 g sliced (published). Sliced comes to 389 g a
        // litre,
        // so the two belong to two preparations, never to one list.
        assertThat(pantry.list.problems(almonds)).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("measure-contradiction");
            assertThat(problem.text()).contains("1 l = 389 g").contains("604 g");
        });
    }

    @Test
    void acceptsMeasuresThatAgreeWithinRounding() {
        Ingredient sugar = Ingredient.named("sugar", "Sugar", Unit.KG)
                .with(item -> item.withMeasures(List.of(
                        new Equivalence(Quantity.parse("1 cup"), Quantity.parse("200 g")),
                        new Equivalence(Quantity.parse("1 l"), Quantity.parse("850 g")))));

        // USDA SR28 (2015), WEIGHT, row 19335: 200 g a cup, 0.8454 g/ml (published, computed)
        assertThat(pantry.list.problems(sugar)).isEmpty();
    }

    @Test
    void wantsANoteForAYieldOverOne() {
        Preparation soaked = new Preparation("soaked", Ratio.parse("2.1"), List.of());
        Ingredient beans = Ingredient.named("beans", "Beans", Unit.KG);

        assertThat(pantry.list.problems(beans.withPreparations(List.of(soaked), Map.of())))
                .extracting(Problem::code)
                .containsExactly("yield-over-one");
        assertThat(pantry.list.problems(beans.withPreparations(
                        List.of(soaked), Map.of("soaked", YieldRecord.NONE.withNote("taken up overnight")))))
                .isEmpty();
    }

    @Test
    void doubtsAPriceInAUnitItCannotReach() {
        Ingredient oil = Ingredient.named("oil", "Oil", Unit.L)
                .with(item -> item.withPrice(Optional.of(UnitPrice.of("7.50", "1 kg"))));

        assertThat(pantry.list.problems(oil))
                .singleElement()
                .satisfies(problem ->
                        assertThat(problem.text()).contains("per 1 kg").contains("Add what 1"));
    }
}
