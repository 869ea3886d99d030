package etamine.recipes.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.measures.Equivalence;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.UseLines;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NewItemTest {
    private static final Missing SAMPHIRE =
            new Missing(Optional.empty(), "samphire", "picked", Optional.of(Quantity.parse("2 cup")));

    private static NewItem filled(String yield, String weighs) {
        return new NewItem(SAMPHIRE, "Samphire", "kg", "9,50 / kg", "picked", yield, weighs, "");
    }

    @Test
    void startsFromWhatTheLineSays() {
        NewItem start = NewItem.of(SAMPHIRE);

        assertThat(start.name()).isEqualTo("Samphire");
        assertThat(start.preparation()).isEqualTo("picked");
        assertThat(start.countIn()).isEqualTo("l");
        assertThat(SAMPHIRE.offer()).isEqualTo("Add “samphire” as a new ingredient");
    }

    @Test
    void makesAnItemWithPriceYieldAndMeasureAndUnknownAllergens() {
        Item item = filled("74", "60 g").item();

        assertThat(item.countIn()).isEqualTo(Unit.KG);
        assertThat(item.writtenPrice().orElseThrow().amount()).isEqualByComparingTo("9.50");
        assertThat(item.preparations()).singleElement().satisfies(prepared -> {
            assertThat(prepared.yield()).isEqualTo(Ratio.parse("0.74"));
            assertThat(prepared.measures())
                    .containsExactly(new Equivalence(Quantity.parse("1 cup"), Quantity.parse("60 g")));
        });
        assertThat(item.allergens().known()).isFalse();
    }

    @Test
    void saysWhatIsMissing() {
        assertThat(filled("74", "").problem()).isEmpty();
        assertThat(filled("", "").problem().orElseThrow()).contains("how many percent");
        assertThat(filled("120", "").problem().orElseThrow()).contains("how many percent");
        assertThat(filled("74", "heavy").problem()).isPresent();
        assertThat(new NewItem(SAMPHIRE, " ", "kg", "", "", "", "", "")
                        .problem()
                        .orElseThrow())
                .contains("name");
        assertThat(new NewItem(SAMPHIRE, "Samphire", "kg", "cheap", "", "", "", "").problem())
                .isPresent();
    }

    @Test
    void takesAllergensAsOneWritesThemAndLeavesThemUnknownOtherwise() {
        Allergens flour = AllergenEntry.read("Wheat, may contain mustard; may contain soya");
        assertThat(flour.contains()).containsExactly("wheat");
        assertThat(flour.mayContain()).containsExactlyInAnyOrder("mustard", "soya");
        assertThat(flour.known()).isTrue();
        assertThat(AllergenEntry.read("none").known()).isTrue();
        assertThat(AllergenEntry.read("none").contains()).isEmpty();
        assertThat(AllergenEntry.read(" ").known()).isFalse();
        NewItem typo = new NewItem(SAMPHIRE, "Samphire", "kg", "", "", "", "", "selery");
        assertThat(typo.problem().orElseThrow()).contains("selery");
    }

    @Test
    void takesAWordForAMeasureInFrontOfSomethingNew() {
        Missing bay =
                new Missing(Optional.empty(), "bay", "", Optional.of(new Quantity(Ratio.of(5), Unit.word("leaf"))));
        Stove stove = new Stove();
        assertThat(Missing.of("5 leaves of bay", unclear(stove, "5 leaves of bay"), stove.model.words()))
                .contains(bay);
        assertThat(Missing.of("2 sweet potatoes", unclear(stove, "2 sweet potatoes"), stove.model.words()))
                .get()
                .extracting(Missing::name)
                .isEqualTo("sweet potatoes");
    }

    private static UseLines.Reading.Unclear unclear(Stove stove, String line) {
        return (UseLines.Reading.Unclear) stove.lines.read(line);
    }

    @Test
    void asksForTheWeightThatThePriceNeeds() {
        Missing garlic = new Missing(Optional.empty(), "garlic", "", Optional.of(Quantity.parse("1 ea")));
        assertThat(NewItem.of(garlic).weighable()).contains(Unit.EA);
        assertThat(new NewItem(garlic, "Garlic", "ea", "7.40 / kg", "", "", "", "")
                        .problem()
                        .orElseThrow())
                .contains("what 1 ea weighs");
        assertThat(new NewItem(garlic, "Garlic", "ea", "7.40 / kg", "", "", "50 g", "").problem())
                .isEmpty();
        assertThat(new NewItem(garlic, "Garlic", "ea", "0.40 / ea", "", "", "", "").problem())
                .isEmpty();
    }
}
