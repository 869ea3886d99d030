package etamine.recipes.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Use;
import java.util.List;
import org.junit.jupiter.api.Test;

class LineSheetTest {
    private final Stove stove = new Stove();
    private final LineSheet sheet = new LineSheet(stove.lines);

    private List<String> texts() {
        return sheet.entries().stream()
                .map(entry -> entry instanceof LineSheet.Entry.Clear clear
                        ? stove.lines.write(clear.use())
                        : "? " + ((LineSheet.Entry.Unclear) entry).text())
                .toList();
    }

    private List<String> items() {
        return sheet.uses().stream().map(Use::item).toList();
    }

    @Test
    void takesLinesAsTypedAndKeepsInPlaceWhatItDoesNotUnderstand() {
        assertThat(sheet.type(0, "100 g cream")).isTrue();
        assertThat(sheet.type(1, "1 kg samphire")).isFalse();
        assertThat(sheet.type(2, "2 ea celeriac")).isTrue();

        assertThat(texts()).containsExactly("100 g Cream", "? 1 kg samphire", "2 ea Celeriac");
        assertThat(items()).containsExactly("cream", "celeriac");
        assertThat(sheet.use(2)).contains(1);
        assertThat(sheet.use(1)).isEmpty();
        assertThat(sheet.row(1)).isEqualTo(2);
        assertThat(sheet.unclear()).isEqualTo(1);
    }

    @Test
    void turnsAPastedListIntoLinesInItsPlace() {
        sheet.type(0, "100 g cream");
        sheet.type(1, "200 g cream");

        sheet.insert(1, stove.lines.readAll("For the purée:\n- 2 ea celeriac\n- 1 kg samphire\n"));

        assertThat(texts()).containsExactly("100 g Cream", "2 ea Celeriac", "? 1 kg samphire", "200 g Cream");
    }

    @Test
    void followsTheBookButKeepsWhatIsStillUnclear() {
        sheet.type(0, "100 g cream");
        sheet.type(1, "1 kg samphire");
        List<Use> before = sheet.uses();
        sheet.type(2, "2 ea celeriac");

        sheet.follow(before);

        assertThat(texts()).containsExactly("100 g Cream", "? 1 kg samphire");
    }

    @Test
    void runsAheadOfTheBookWhileASaveIsUnderWay() {
        sheet.type(0, "100 g cream");
        sheet.begin();
        sheet.type(1, "2 ea celeriac");

        sheet.follow(List.of());
        assertThat(items()).containsExactly("cream", "celeriac");

        sheet.end();
        sheet.follow(List.of());
        assertThat(items()).isEmpty();
    }

    @Test
    void keepsARefusedLineToLookAt() {
        sheet.type(0, "100 g cream");
        List<Use> inBook = sheet.uses();
        sheet.type(1, "2 ea celeriac");

        sheet.refused(inBook, "This goes round in a circle.");

        assertThat(texts()).containsExactly("100 g Cream", "? 2 ea Celeriac");
        sheet.follow(inBook);
        assertThat(sheet.entries()).hasSize(2);
    }

    @Test
    void movesSwitchesOpensAndRemoves() {
        sheet.type(0, "100 g cream");
        sheet.type(1, "2 cup celeriac, peeled, large dice");

        assertThat(sheet.move(1, -1)).isTrue();
        assertThat(sheet.move(0, -1)).isFalse();
        assertThat(sheet.switchBasis(0)).isTrue();
        assertThat(sheet.uses().get(0).basis()).isEqualTo(Basis.AP);
        sheet.open(1);
        assertThat(texts()).hasSize(3);
        sheet.type(1, "");
        sheet.type(1, "");

        assertThat(items()).containsExactly("celeriac");
    }

    @Test
    void readsUnclearLinesAnewOnceTheirItemIsThere() {
        sheet.type(0, "1 kg samphire");
        sheet.type(1, "2 kg samphire");
        Missing missing = new Missing(java.util.Optional.empty(), "samphire", "", java.util.Optional.empty());
        stove.model.start(NewItem.of(missing));

        sheet.reread(0, "1 kg samphire");

        assertThat(items()).containsExactly("samphire", "samphire");
    }
}
