package etamine.ingredients.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.ingredients.Ingredient;
import etamine.ingredients.IngredientMerges.Likeness;
import etamine.measures.Equivalence;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DuplicatesTest {

    private static List<Likeness> among(String... names) {
        return Duplicates.of(Stream.of(names).map(DuplicatesTest::named).toList(), ingredient -> 0);
    }

    private static Ingredient named(String name) {
        return Ingredient.named(name.toLowerCase().replace(' ', '-'), name, Unit.KG);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Celeriac       | celeriac         | the same name
            Crème fraîche  | CREME FRAICHE    | the same words
            White wine     | wine, white      | the same words
            Tomato         | Tomatoes         | the same words
            Berry          | Berries          | the same words
            Cauliflower    | Cauliflwer       | one letter differs
            Brussels sprouts | Brusels sprots | 2 letters differ
            Морковь        | морковь          | the same name
            """)
    void findsWhatIsWrittenNowSoAndNowSo(String one, String other, String why) {
        assertThat(among(one, other))
                .singleElement()
                .satisfies(pair -> assertThat(pair.why()).isEqualTo(why));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Flour 405 | Flour 550
            Cod       | Cos
            Leek      | Lemon
            Red wine  | White wine
            大根       | 大豆
            """)
    void leavesAloneWhatIsNotTheSame(String one, String other) {
        assertThat(among(one, other)).isEmpty();
    }

    @Test
    void putsTheLikeliestFirstAndTheOneMoreIsKnownOfAsTheOneToKeep() {
        Ingredient onion = named("Onions")
                .with(item ->
                        item.withMeasures(List.of(new Equivalence(Quantity.parse("1 ea"), Quantity.parse("150 g")))));
        Ingredient union =
                named("Onoins").with(item -> item.withMeasures(onion.item().measures()));
        Ingredient pepper = named("Pepper");
        Ingredient peppers = named("Peppers");

        List<Likeness> found =
                Duplicates.of(List.of(union, onion, pepper, peppers), ingredient -> ingredient == peppers ? 5 : 0);

        assertThat(found).extracting(pair -> pair.one().item().name()).first().isEqualTo("Peppers");
        assertThat(found)
                .filteredOn(pair -> pair.why().contains("the same measures"))
                .allSatisfy(pair -> assertThat(pair.one().item().name()).startsWith("On"));
    }

    @Test
    void findsTheSamePairsInWhateverOrderThousandsCome() {
        List<Ingredient> all = new ArrayList<>();
        Random random = new Random(20261125);
        for (int i = 0; i < 5000; i++) {
            all.add(named(word(random) + " " + word(random)));
        }
        all.add(named("Guinea fowl"));
        all.add(named("Fowl, guinea"));
        Collections.shuffle(all, random);

        assertThat(Duplicates.of(all, ingredient -> 0))
                .anySatisfy(pair -> assertThat(List.of(
                                pair.one().item().name(), pair.other().item().name()))
                        .containsExactlyInAnyOrder("Guinea fowl", "Fowl, guinea"));
    }

    private static String word(Random random) {
        return random.ints(7, 'a', 'z' + 1)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
