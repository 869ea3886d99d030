package etamine.ingredients.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.ingredients.Ingredient;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemStarter;
import etamine.kitchen.item.Preparation;
import etamine.measures.Equivalence;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

class StartedIngredientsTest {
    private final Pantry pantry = new Pantry();
    private final ItemStarter starter = new StartedIngredients(pantry.list);

    private static Item named(String name) {
        return Ingredient.named("whatever", name, Unit.KG).item();
    }

    @Test
    void startsAnIngredientUnderAnIdentifierOfItsOwnName() {
        String id = starter.start(named("Sea purslane"));

        assertThat(id).isEqualTo("sea-purslane");
        assertThat(pantry.list.find(id).orElseThrow().item().name()).isEqualTo("Sea purslane");
        assertThat(starter.start(named("Sea purslane"))).isNotEqualTo(id);
        assertThat(pantry.book.history().undoable()).isPresent();
    }

    @Test
    void addsAPreparationOrPutsItInPlaceOfTheOld() {
        String id = starter.start(named("Sea purslane"));
        starter.prepare(id, new Preparation("picked", Ratio.parse("0.8"), List.of()));
        starter.prepare(id, new Preparation("picked", Ratio.parse("0.75"), List.of()));

        assertThat(pantry.list.find(id).orElseThrow().item().preparations())
                .containsExactly(new Preparation("picked", Ratio.parse("0.75"), List.of()));
    }

    @Test
    void addsAMeasureToThoseThereAre() {
        String id = starter.start(named("Sea purslane"));
        Equivalence sprig = new Equivalence(Quantity.of(1, Unit.word("sprig")), Quantity.parse("2 g"));
        starter.measure(id, sprig);
        starter.measure(id, new Equivalence(Quantity.parse("1 cup"), Quantity.parse("30 g")));

        assertThat(pantry.list.find(id).orElseThrow().item().measures())
                .hasSize(2)
                .contains(sprig);
        assertThatThrownBy(() -> starter.measure("nothing", sprig)).isInstanceOf(MeasureException.class);
    }

    @Test
    void saysWhyItCannot() {
        String id = starter.start(named("Sea purslane"));

        assertThatThrownBy(() -> starter.prepare("nothing", new Preparation("picked", Ratio.ONE, List.of())))
                .isInstanceOf(MeasureException.class)
                .hasMessageContaining("not on the ingredient list");
        assertThatThrownBy(() -> starter.prepare(id, new Preparation("picked", Ratio.of(0), List.of())))
                .isInstanceOf(MeasureException.class);
    }
}
