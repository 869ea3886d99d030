package etamine.recipes.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.recipe.Kind;
import etamine.recipes.UseLines;
import etamine.recipes.UseLines.Reading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class OwnLinesTest {
    private static final String BIRD = "guinea-fowl-broken-down";

    private final Stove stove = new Stove();

    @BeforeEach
    void start() {
        stove.model.add("Guinea fowl, broken down", Kind.BREAKDOWN);
    }

    private Reading read(String text) {
        return stove.model.lines(BIRD).read(text);
    }

    @Test
    void takesAPartOfTheRecipesOwnNameForSomethingNew() {
        assertThat(read("1.4 kg guinea fowl, whole")).isInstanceOfSatisfying(Reading.Unclear.class, unclear -> {
            assertThat(unclear.text()).contains("guinea fowl, whole");
            Missing missing = Missing.of("1.4 kg guinea fowl, whole", unclear, stove.model.words())
                    .orElseThrow();
            assertThat(missing.item()).isEmpty();
            assertThat(missing.name()).isEqualTo("guinea fowl");
            assertThat(missing.preparation()).isEqualTo("whole");
        });
        assertThat(stove.model.lines(BIRD).readAll("1.4 kg guinea fowl"))
                .singleElement()
                .satisfies(line -> assertThat(line.reading()).get().isInstanceOf(UseLines.Reading.Unclear.class));
    }

    @Test
    void leavesWholeNamesAndOtherRecipesAlone() {
        assertThat(read("1.4 kg guinea fowl, broken down")).isInstanceOf(Reading.Clear.class);
        assertThat(read("200 g cream")).isInstanceOf(Reading.Clear.class);
        assertThat(stove.model.lines("celeriac-puree").read("1 kg guinea fowl, whole"))
                .isEqualTo(stove.lines.read("1 kg guinea fowl, whole"));
    }
}
