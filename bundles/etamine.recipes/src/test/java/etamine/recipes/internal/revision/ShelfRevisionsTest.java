package etamine.recipes.internal.revision;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Change;
import etamine.recipes.Difference;
import etamine.recipes.Difference.What;
import etamine.recipes.Revision;
import etamine.recipes.internal.Range;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ShelfRevisionsTest {
    private static final String FIRST = """
            {"id": "soup", "name": "Soup", "kind": "component", "x-colour": "white",
             "uses": [{"item": "cream", "quantity": "1/2 l"}, {"item": "leek", "quantity": "1 kg"},
                      {"item": "butter", "quantity": "50 g"}],
             "makes": [{"item": "soup", "quantity": "1 kg"}],
             "steps": [{"id": "boil", "text": "Boil the leeks gently until soft."}], "notes": "Calm."}""";
    private static final String SECOND = """
            {"id": "soup", "name": "Leek soup", "kind": "component",
             "uses": [{"item": "butter", "quantity": "60 g"}, {"item": "cream", "quantity": "1/2 l"},
                      {"item": "potato", "quantity": "200 g"}],
             "makes": [{"item": "soup", "quantity": "1.2 kg"}],
             "steps": [{"id": "boil", "text": "Boil the leeks very gently until soft.", "temperature": "95 °C"},
                       {"id": "pass", "text": "Pass."}], "portion": "200 g", "notes": "Calm."}""";

    private final Range range = new Range();

    @BeforeEach
    void list() {
        List.of("cream", "leek", "butter", "potato").forEach(item -> range.item(item, "kg"));
        range.load(FIRST);
        range.load(SECOND);
    }

    private List<Difference> differences() {
        List<Revision> all = range.revisions.of("soup");
        return range.revisions.between(
                all.get(1).recipe().orElseThrow(), all.get(0).recipe().orElseThrow());
    }

    @Test
    void listsRevisionsNewestFirst() {
        assertThat(range.revisions.of("soup")).extracting(Revision::number).containsExactly(2L, 1L);
        assertThat(range.revisions.of("soup").get(1).recipe()).map(Recipe::name).contains("Soup");
        assertThat(range.revisions.of("nothing")).isEmpty();
    }

    @Test
    void tellsLineByLineWhatDiffers() {
        assertThat(differences())
                .extracting(each -> each.what() + " " + each.where() + ": " + each.before() + " -> " + each.after())
                .containsExactly(
                        "TEXT Name: Soup -> Leek soup",
                        "REMOVED leek: 1 kg leek AP -> ",
                        "AMOUNT butter: 50 g butter AP -> 60 g butter AP",
                        "MOVED cream: 0.5 l cream AP -> 0.5 l cream AP",
                        "ADDED potato:  -> 200 g potato AP",
                        "AMOUNT Leek soup: 1 kg Leek soup -> 1.2 kg Leek soup",
                        "CHANGED Portion:  -> 200 g",
                        "TEXT Step boil: Boil the leeks gently until soft. -> Boil the leeks very gently until soft.",
                        "CHANGED Step boil:  -> 95 °C",
                        "ADDED Step pass:  -> Pass.");
    }

    @Test
    void tellsTextsWordByWord() {
        Difference step = differences().stream()
                .filter(each -> each.what() == What.TEXT && each.where().equals("Step boil"))
                .findFirst()
                .orElseThrow();

        assertThat(step.words().stream()
                        .map(words -> words.kind() + ":" + words.text())
                        .collect(Collectors.joining("|")))
                .isEqualTo("SAME:Boil the leeks |ADDED:very |SAME:gently until soft.");
    }

    @Test
    void findsNoDifferenceBetweenARecipeAndItself() {
        Recipe soup = range.recipe("soup");

        assertThat(range.revisions.between(soup, soup)).isEmpty();
    }

    @Test
    void bringsARevisionBackWithEveryMemberItHad() {
        assertThat(range.revisions.restore("soup", 1)).isEqualTo(new Change.Done("soup", 3));

        assertThat(range.section.dump().get(0)).isEqualTo(Range.json(FIRST));
        assertThat(range.book.history().undoable()).contains("Bring back revision 1 of Soup");
        assertThat(range.revisions.of("soup")).hasSize(3);
    }

    @Test
    void bringsARemovedRecipeBack() {
        range.writing.remove("soup");

        assertThat(range.revisions.of("soup").get(0).removed()).isTrue();
        assertThat(range.revisions.restore("soup", 2)).isInstanceOf(Change.Done.class);
        assertThat(range.recipe("soup").name()).isEqualTo("Leek soup");
    }

    @Test
    void refusesWhatWouldNotWorkAnyMore() {
        range.load("""
                {"id": "leek-base", "name": "Leek base", "uses": [{"item": "soup", "quantity": "1 kg"}],
                 "makes": [{"item": "leek", "quantity": "1 kg"}]}""");

        assertThat(range.revisions.restore("soup", 1)).isInstanceOf(Change.Refused.class);
        assertThat(range.revisions.restore("soup", 77)).isInstanceOf(Change.Refused.class);
        assertThat(range.revisions.of("soup")).hasSize(2);
    }

    @Test
    void comparesLongTextsInBoundedTime() {
        String before = "a b c d e ".repeat(1_000);
        String after = "e d c b a ".repeat(1_000);

        assertThat(WordDifference.between(before, after)).isNotEmpty();
        assertThat(WordDifference.between("x ".repeat(10_000), "y ".repeat(10_000)))
                .hasSizeGreaterThan(1);
    }
}
