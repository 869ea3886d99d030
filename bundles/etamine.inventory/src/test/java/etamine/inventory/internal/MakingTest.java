package etamine.inventory.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.inventory.Movement;
import etamine.inventory.RefusedException;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.recipe.Requirement;
import etamine.kitchen.recipe.Use;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import etamine.testing.GivenItems;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class MakingTest {
    private static final Item CELERIAC =
            GivenItems.prepared(GivenItems.item("celeriac", Unit.KG), "peeled", "0.75", "1 cup = 150 g");
    private final Shelf shelf = Shelf.withPlaces();

    @BeforeEach
    void givePuree() {
        shelf.given.with(CELERIAC).with("puree", Unit.G).with("peel", Unit.G);
        Recipe puree = recipe(
                "puree",
                List.of(
                        new Use("celeriac", Quantity.parse("2 cup"), Optional.of("peeled"), Basis.EP),
                        new Use("cream", Quantity.parse("100 ml"), Optional.empty(), Basis.AP)),
                List.of(
                        new Make("puree", Quantity.parse("380 g"), Optional.empty()),
                        new Make("peel", Quantity.parse("100 g"), Optional.of(UnitPrice.of("1.00", "1 kg")))));
        shelf.room.recipes = new OneRecipe(puree);
        shelf.receive("celeriac", "1 kg", "", "2.00", "1 kg");
        shelf.receive("cream", "1 l", "2026-11-30", "4.00", "1 l");
    }

    private static Recipe recipe(String id, List<Use> uses, List<Make> makes) {
        return new Recipe(
                id,
                "Celeriac purée",
                Kind.COMPONENT,
                uses,
                makes,
                Optional.empty(),
                Optional.of(Period.ofDays(3)),
                0,
                List.of(),
                Optional.empty(),
                "");
    }

    @Test
    void takesWhatIsUsedAsPurchasedAndAddsWhatIsMade() {
        List<Movement> moved = shelf.room.make("puree", Ratio.parse("2"));
        // 2 batches x 2 cup x 150 g / 0.75 = 800 g of celeriac as purchased
        assertThat(moved)
                .extracting(m -> m.kind() + " " + m.item() + " " + m.quantity())
                .containsExactly("USED celeriac -0.8 kg", "USED cream -0.2 l", "MADE puree 760 g", "MADE peel 200 g");
        assertThat(moved.get(2).useBy()).contains(shelf.kitchen.today().plusDays(3));
        assertThat(moved.get(3).useBy()).isEmpty();
    }

    @Test
    void givesWhatIsMadeTheCostOfTheLotsThatWentIn() {
        Movement puree = shelf.room.make("puree", Ratio.parse("2")).get(2);
        // (0.8 kg x 2.00 + 0.2 l x 4.00 - 0.2 kg x 1.00) / 0.76 kg = 2.20 / 0.76 = 2.894737 a kilogram
        assertThat(puree.unitCost()).contains(UnitPrice.of("2.894737", "1 kg"));
    }

    @Test
    void givesNoCostWhenALotHasNone() {
        shelf.take(MovementKind.USED, "cream", "1 l");
        assertThat(shelf.room.make("puree", Ratio.ONE).get(2).unitCost()).isEmpty();
    }

    @Test
    void saysWhichMeasureIsMissingAndMovesNothing() {
        shelf.given.with("celeriac", Unit.KG);
        assertThatThrownBy(() -> shelf.room.make("puree", Ratio.ONE))
                .isInstanceOfSatisfying(
                        RefusedException.class,
                        refused -> assertThat(refused.reason()).isEqualTo(RefusedException.Reason.MISSING_EQUIVALENCE));
        assertThat(shelf.line("cream").onHand()).isEqualTo(Quantity.parse("1 l"));
    }

    @Test
    void saysSoWithoutRecipes() {
        shelf.room.recipes = null;
        assertThatThrownBy(() -> shelf.room.make("puree", Ratio.ONE))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("recipes");
    }

    @Test
    void cautionsAboutLotsPastTheirMarkedDay() {
        shelf.day("2026-12-02");
        List<Movement> moved = shelf.room.make("puree", Ratio.ONE);
        assertThat(MovementReport.cautions(moved, shelf.items, shelf.kitchen.today()))
                .singleElement()
                .asString()
                .contains("Cream", "2026-11-30", "local rules decide");
    }

    /** A book with a single recipe. */
    private record OneRecipe(Recipe recipe) implements Recipes {
        @Override
        public Map<String, Recipe> all() {
            return Map.of(recipe.id(), recipe);
        }

        @Override
        public Optional<Recipe> find(String id) {
            return Optional.ofNullable(all().get(id));
        }

        @Override
        public List<Recipe> inOrder() {
            return List.of(recipe);
        }

        @Override
        public Optional<Recipe> maker(String item) {
            return find(item);
        }

        @Override
        public List<Recipe> usersOf(String item) {
            return List.of(recipe);
        }

        @Override
        public Requirement require(Map<String, Quantity> wanted, Map<String, Quantity> available) {
            return new Requirement(wanted, Map.of(), Map.of(), List.of());
        }
    }
}
