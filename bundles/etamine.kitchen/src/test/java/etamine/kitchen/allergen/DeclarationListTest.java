package etamine.kitchen.allergen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import etamine.measures.Ratio;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The lists at their edges. Sources, each with its mark: EU - Regulation (EU) No 1169/2011, Annex II, by the guidance of
 * the Food Standards Agency and Commission Notice 2017/C 428/01 (secondary). US - FALCPA 2004 with the FASTER Act 2021
 * (from memory), 21 CFR 101.100(a)(4) for sulphites. FSANZ - Standard 1.2.3 and Schedule 9 (secondary). Canada - Food
 * and Drug Regulations (from memory). Codex - CXS 1-1985 (from memory), revision of 2024 (secondary). What a list
 * leaves open is not asserted here.
 */
class DeclarationListTest {

    @ParameterizedTest
    @CsvSource(textBlock = """
        10,   false, true, true, true, true
        10.1, true,  true, true, true, true
        9.9,  false, false, false, false, false
        """)
    void declaresSulphitesFromTheLimitOfEachList(
            String amount, boolean eu, boolean us, boolean fsanz, boolean canada, boolean codex) {
        Allergen measured = Allergen.of("sulphites").measured(Ratio.of(new BigDecimal(amount)));
        assertThat(List.of(DeclarationList.values()))
                .map(list -> declares(list, measured))
                .containsExactly(eu, us, fsanz, canada, codex);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
        EU, pine nut, false
        FSANZ, pine nut, true
        CANADA, pine nut, true
        EU, barley, true
        US, barley, false
        FSANZ, barley, true
        CANADA, barley, true
        CODEX, barley, true
        EU, oyster, true
        US, oyster, false
        FSANZ, oyster, true
        CANADA, oyster, true
        EU, celery, true
        US, celery, false
        US, mustard, false
        US, lupin, false
        US, rye, false
        US, oats, false
        US, sesame, true
        EU, spelt, true
        EU, khorasan wheat, true
        EU, Queensland nut, true
        CANADA, triticale, true
        CANADA, lupin, false
        FSANZ, celery, false
        """)
    void knowsWhatIsOnEachList(DeclarationList list, String word, boolean declared) {
        assertThat(declares(list, Allergen.of(word))).isEqualTo(declared);
    }

    @Test
    void leavesWhatCodexLeavesToCountriesToThem() {
        assertThat(List.of("pine nut", "macadamia", "brazil nut", "celery", "lupin", "mustard", "oats", "soy"))
                .allMatch(word ->
                        DeclarationList.CODEX.judge(Allergen.of(word)).get(0).standing() == Standing.NATIONAL);
    }

    @Test
    void hasFourteenGroupsForEuropeAndNineWithSulphitesForAmerica() {
        assertThat(DeclarationList.EU.groups()).hasSize(14);
        assertThat(DeclarationList.US.groups()).map(Group::id).hasSize(10).contains("sulphites");
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
        EU, nuts, nuts, Name the nut.
        EU, gluten, gluten, Name the cereal.
        US, gluten, wheat, Name the cereal.
        US, fish, fish, Name the fish.
        US, crustaceans, crustaceans, Name the crustacean.
        EU, fish, fish, ''
        EU, almond, nuts, ''
        US, hake, fish, ''
        EU, prawns, crustaceans, ''
        """)
    void asksForTheNameThatAListWants(DeclarationList list, String word, String group, String ask) {
        Declaration said = list.judge(Allergen.of(word)).get(0);
        assertThat(said.group().id()).isEqualTo(group);
        assertThat(said.ask().orElse("")).isEqualTo(ask);
        assertThat(said.declared()).isTrue();
    }

    @Test
    void putsAWordThatMayMeanSeveralIntoEachOfTheirGroups() {
        assertThat(DeclarationList.EU.judge(Allergen.of("shellfish")))
                .map(said -> said.group().id() + " " + said.ask().orElse(""))
                .containsExactly("crustaceans Name the shellfish.", "molluscs Name the shellfish.");
    }

    @Test
    void declaresSulphitesThatNobodyHasMeasured() {
        assertThat(DeclarationList.values()).allMatch(list -> declares(list, Allergen.of("SO2")));
    }

    @Test
    void saysWhichListsThereAre() {
        assertThat(DeclarationList.of(" Fsanz ")).isEqualTo(DeclarationList.FSANZ);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DeclarationList.of("moon"))
                .withMessage("There is no allergen list moon; choose one of eu, us, fsanz, canada, codex.");
    }

    private static boolean declares(DeclarationList list, Allergen allergen) {
        return list.judge(allergen).stream().anyMatch(Declaration::declared);
    }
}
