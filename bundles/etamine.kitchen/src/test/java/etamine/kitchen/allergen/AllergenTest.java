package etamine.kitchen.allergen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AllergenTest {

    @ParameterizedTest
    @CsvSource(textBlock = """
        gluten, GLUTEN, gluten
        NUTS, NUTS, nuts
        tree-nuts, NUTS, nuts
        eggs, EGG, egg
        Dairy, MILK, milk
        lactose, MILK, milk
        soya beans, SOY, soy
        Filberts, HAZELNUT, hazelnut
        anchovies, FISH, fish (anchovy)
        hake, FISH, fish (hake)
        oysters, MOLLUSC, molluscs (oyster)
        Sulfites, SULPHITES, sulphites
        celeriac, CELERY, celery
        pine kernels, PINE_NUT, pine nut
        oats, OATS, oats
        """)
    void readsTheWordsPeopleWrite(String written, Substance substance, String words) {
        Allergen read = Allergen.of(written);
        assertThat(read.substance()).contains(substance);
        assertThat(read.inWords()).isEqualTo(words);
    }

    @Test
    void keepsWhatNoListKnows() {
        Allergen kiwi = Allergen.of(" Kiwi fruit ");
        assertThat(kiwi.substance()).isEmpty();
        assertThat(kiwi.inWords()).isEqualTo("Kiwi fruit");
        assertThat(DeclarationList.values()).allMatch(list -> list.judge(kiwi).isEmpty());
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
        nuts, 'almonds, hazelnuts', almond | hazelnut
        gluten, wheat and rye, rye | wheat
        fish, hake, fish (hake)
        fish, John Dory, fish (John Dory)
        nuts, chestnut, nuts (chestnut)
        nuts, '', nuts
        milk, peanut, milk | peanut
        """)
    void namesABroadWord(String word, String names, String expected) {
        assertThat(String.join(
                        " | ",
                        Allergen.of(word, names).stream()
                                .map(Allergen::inWords)
                                .sorted()
                                .toList()))
                .isEqualTo(expected);
    }

    @Test
    void stillAsksForTheNutWhenTheNameIsNoneOfThem() {
        assertThat(Allergen.of("nuts", "chestnut").iterator().next().ask()).contains("Name the nut.");
    }

    @Test
    void givesEveryWordOneMeaning() {
        Set<String> words = new HashSet<>();
        for (Substance substance : Substance.values()) {
            Stream.of(Stream.of(substance.word()), substance.synonyms().stream(), substance.species().stream())
                    .flatMap(each -> each)
                    .forEach(word -> {
                        assertThat(words.add(word.toLowerCase(Locale.ROOT)))
                                .as(word)
                                .isTrue();
                        assertThat(Allergen.of(word).substance()).as(word).isEqualTo(Optional.of(substance));
                    });
        }
    }
}
