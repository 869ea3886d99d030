package etamine.recipes.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.recipes.FoundRecipes;
import etamine.recipes.FoundRecipes.Found;
import etamine.recipes.FoundRecipes.Fresh;
import etamine.recipes.FoundRecipes.Line;
import etamine.recipes.FoundRecipes.Presence;
import etamine.recipes.FoundRecipes.State;
import etamine.recipes.RecipeFiles.Taken;
import etamine.testing.DisplayRule;
import etamine.widgets.FormDialog;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class ImportModelTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private static final Line CLEAR = new Line(
            "1 l cream",
            State.CLEAR,
            Optional.of(new Use("cream", Quantity.parse("1 l"), Optional.empty(), Basis.AP)),
            Optional.empty(),
            "");
    private static final Line FRESH = new Line(
            "500 g lentils",
            State.NEW,
            Optional.of(new Use("lentils", Quantity.parse("500 g"), Optional.empty(), Basis.AP)),
            Optional.of(new Fresh("lentils", "Lentils", Unit.KG)),
            "The book has no Lentils; add it.");
    private static final Line UNCLEAR =
            new Line("pepper", State.UNCLEAR, Optional.empty(), Optional.empty(), "Write an amount.");

    private final ImportModel model = new ImportModel(new FoundRecipes(
            Path.of("soup.jsonld"),
            List.of(
                    found(1, Presence.NEW, CLEAR),
                    found(2, Presence.NEW, CLEAR, FRESH),
                    found(3, Presence.NEW, UNCLEAR),
                    found(4, Presence.SAME, CLEAR)),
            List.of()));

    @Test
    void takesOnlyWhatIsWhollyUnderstoodUntilToldOtherwise() {
        assertThat(model.chosen()).containsExactly(1);
        model.newIngredients(true);
        assertThat(model.chosen()).containsExactlyInAnyOrder(1, 2);
        model.gaps(true);
        assertThat(model.chosen()).containsExactlyInAnyOrder(1, 2, 3);
        assertThat(model.outlook()).isEqualTo("3 of 4 recipes would be taken over.");
    }

    @Test
    void showsEveryLineWithWhatToDoAboutIt() {
        assertThat(model.rows()).hasSize(9);
        assertThat(model.rows())
                .filteredOn(ImportModel.Row::doubtful)
                .extracting(ImportModel.Row::text)
                .containsExactly("500 g lentils", "pepper");
        assertThat(model.rows()).extracting(ImportModel.Row::id).doesNotHaveDuplicates();
        assertThat(model.unknownIngredients()).isEqualTo(1);
    }

    @Test
    void saysWhyNothingCanBeTaken() {
        ImportModel same =
                new ImportModel(new FoundRecipes(Path.of("x"), List.of(found(1, Presence.SAME, CLEAR)), List.of()));
        assertThat(same.problem()).hasValueSatisfying(text -> assertThat(text).contains("already"));
        ImportModel unclear = new ImportModel(new FoundRecipes(
                Path.of("x"), List.of(found(1, Presence.NEW, UNCLEAR)), List.of("Block 2 is broken.")));
        assertThat(unclear.problem())
                .hasValueSatisfying(text -> assertThat(text).contains("gaps"));
        assertThat(unclear.outlook()).endsWith("Block 2 is broken.");
        unclear.gaps(true);
        assertThat(unclear.problem()).isEmpty();
    }

    @Test
    void saysWhatWasTaken() {
        assertThat(ImportModel.sentence(new Taken(List.of("a"), List.of(), List.of())))
                .isEqualTo("1 recipe taken over; undo takes it back.");
        assertThat(ImportModel.sentence(new Taken(List.of("a", "b"), List.of("c"), List.of())))
                .contains("2 recipes")
                .contains("1 new ingredient")
                .contains("unknown");
    }

    @Test
    void changesTheOutlookWithWhatIsAllowed() {
        Shell shell = DISPLAY.shell(900, 600);
        FormDialog dialog = new ImportDialog(shell, model).dialog();
        dialog.setBlockOnOpen(false);
        dialog.open();
        Shell opened = dialog.getShell();
        assertThat(DISPLAY.find(opened, "table:import", Table.class).getItemCount())
                .isEqualTo(9);
        Button fresh = DISPLAY.find(opened, "check:import-new", Button.class);
        fresh.setSelection(true);
        DISPLAY.select(fresh);
        assertThat(model.chosen()).hasSize(2);
        DISPLAY.select(DISPLAY.find(opened, "dialog:ok", Button.class));
        assertThat(dialog.getReturnCode()).isEqualTo(FormDialog.OK);
    }

    private static Found found(int number, Presence presence, Line... lines) {
        String id = "soup-" + number;
        Recipe recipe = new Recipe(
                id,
                "Soup " + number,
                Kind.COMPONENT,
                List.of(),
                List.of(new Make(id, Quantity.parse("1 l"), Optional.empty())),
                Optional.empty(),
                Optional.empty(),
                0,
                List.of(),
                Optional.empty(),
                "");
        return new Found(number, "/" + number, recipe, presence, List.of(lines), List.of(), "{}");
    }
}
