package etamine.recipes.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.widgets.RiverDrawing.Pool;
import etamine.widgets.RiverDrawing.Role;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class RiverModelTest {
    private final Stove stove = new Stove();
    private final RiverModel model = new RiverModel(stove.ware.insight().rivers(), stove.model::text);

    @BeforeEach
    void puree() {
        stove.model.add("Purée", Kind.COMPONENT);
        stove.model.save(
                "puree",
                recipe -> recipe.withUses(List.of(
                                new Use(
                                        "celeriac",
                                        Quantity.parse("740 g"),
                                        Optional.of("peeled, large dice"),
                                        Basis.EP),
                                new Use("cream", Quantity.parse("260 g"), Optional.empty(), Basis.AP)))
                        .withMakes(List.of(new Make("puree", Quantity.parse("900 g"), Optional.empty()))));
    }

    private RiverView view() {
        return model.view(recipe(), true);
    }

    private Recipe recipe() {
        return stove.recipes.find("puree").orElseThrow();
    }

    @Test
    void givesEachPoolItsPartAndItsFigure() {
        assertThat(view().pools())
                .extracting(pool -> pool.role() + " " + pool.label() + " " + pool.figure())
                .containsExactlyInAnyOrder(
                        "SOURCE Celeriac 1 kg",
                        "SOURCE Cream 260 g",
                        "WORK Purée 1 kg",
                        "LOSS Celeriac, trimmed 260 g",
                        "LOSS Purée, lost 100 g",
                        "GOAL Purée 900 g");
        assertThat(view().pools().stream().filter(pool -> pool.role() == Role.GOAL))
                .extracting(Pool::amount)
                .containsExactly(900_000_000L);
    }

    @Test
    void hasARowForEveryRibbon() {
        assertThat(view().rows())
                .extracting(row -> row.from() + " | " + row.to() + " | " + row.amount())
                .containsExactlyInAnyOrder(
                        "Celeriac | Purée | 740 g",
                        "Celeriac | Celeriac, trimmed | 260 g",
                        "Cream | Purée | 260 g",
                        "Purée | Purée, lost | 100 g",
                        "Purée | Purée, served | 900 g");
        assertThat(view().streams()).hasSize(5);
    }

    @Test
    void explainsANodeByWhatFlowsInAndOut() {
        Explanation story = model.explain(view(), "made:puree").orElseThrow();
        assertThat(story.value()).isEqualTo("1 kg");
        assertThat(story.parts()).extracting(Explanation::title).containsExactly("Comes in", "Goes out");
        assertThat(story.parts().get(0).parts())
                .extracting(part -> part.title() + " " + part.value())
                .containsExactlyInAnyOrder("Celeriac 740 g", "Cream 260 g");
        assertThat(story.subject()).contains(new Subject("recipe", "puree"));
        assertThat(model.explain(view(), "bought:cream").orElseThrow().subject())
                .contains(new Subject("item", "cream"));
    }

    @Test
    void namesWhatCouldNotBeWeighed() {
        stove.model.save(
                "puree",
                recipe ->
                        recipe.withUses(List.of(new Use("cream", Quantity.parse("2 ea"), Optional.empty(), Basis.AP))));
        assertThat(view().notes()).anySatisfy(note -> assertThat(note).startsWith("Not weighed: 2 ea cream in Purée."));
    }
}
