package etamine.recipes.internal.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Progress;
import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.recipes.internal.Range;
import etamine.recipes.internal.allergen.RolledAllergens;
import etamine.recipes.internal.find.IndexedSearch;
import etamine.recipes.internal.revision.RevisionsVerb;
import etamine.recipes.internal.trial.TrialsVerb;
import etamine.recipes.internal.weight.BalanceVerb;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the window does with recipes, from the console. */
class RecipeVerbsTest {
    private final Range range = new Range();
    private final Verb card = new CardVerb(range.shelf, range.writing, range.cards);
    private final Verb trials = new TrialsVerb(range.shelf, range.trials, range.cards);
    private final Verb revisions = new RevisionsVerb(range.revisions);
    private final Verb balance = new BalanceVerb(range.shelf, range.balances, range.cards);
    private final Verb recipes = new RecipesVerb(
            range.shelf,
            new IndexedSearch(range.shelf, range::known, range.made, new RolledAllergens(range::known, range.made)),
            range.cards);

    @BeforeEach
    void bird() {
        range.item("bird", "kg");
        range.load("""
                {"id": "cut-bird", "name": "Cut bird", "kind": "breakdown",
                 "uses": [{"item": "bird", "quantity": "2 kg"}],
                 "makes": [{"item": "breast", "quantity": "600 g"}, {"item": "leg", "quantity": "600 g"}]}""");
    }

    private static Report run(Verb verb, Map<String, String> options, String... arguments) throws VerbException {
        return verb.run(new VerbCall(List.of(arguments), options, "", Path.of(""), Progress.unseen()));
    }

    @Test
    void putsARecipeAwayAndTakesItOutAgain() throws VerbException {
        run(card, Map.of("--archive", "true"), "cut-bird");

        assertThat(run(recipes, Map.of()).lines()).containsExactly("No recipe fits.");
        assertThat(run(recipes, Map.of("--archived", "true")).json().toString()).contains("id=cut-bird");
        assertThat(run(card, Map.of(), "cut-bird").lines()).anyMatch(line -> line.contains("put away"));
        run(card, Map.of("--unarchive", "true"), "cut-bird");
        assertThat(run(recipes, Map.of(), "bird").json().toString()).contains("id=cut-bird");
    }

    @Test
    void copiesARecipe() throws VerbException {
        assertThat(run(card, Map.of("--copy", "Other bird"), "cut-bird").lines())
                .containsExactly("Added Other bird, a copy of Cut bird.");
        assertThat(range.recipe("other-bird").uses()).hasSize(1);
    }

    @Test
    void recordsTestsAndMakesThemTheYield() throws VerbException {
        run(trials, Map.of("--in", "1 kg", "--out", "breast=320 g,leg=280 g", "--date", "2026-11-20"), "cut-bird");
        run(trials, Map.of("--in", "1 kg", "--out", "breast=300 g,leg=0,3 kg", "--date", "2026-11-21"), "cut-bird");

        Report report = run(trials, Map.of(), "cut-bird");
        assertThat(report.json().toString()).contains("meanPercent=31.0").contains("working=620 g");
        run(trials, Map.of("--accept", "all"), "cut-bird");
        assertThat(range.recipe("cut-bird").makes().get(0).quantity()).hasToString("620 g");
        run(trials, Map.of("--tried", "true"), "cut-bird");
        run(trials, Map.of("--forget", "1"), "cut-bird");
        assertThat(range.recipe("cut-bird").standing().tests()).hasSize(1);
        assertThat(range.recipe("cut-bird").tested()).isEqualTo(1);
    }

    @Test
    void refusesWrongCallsWithAWayOut() {
        assertThatThrownBy(() -> run(trials, Map.of("--in", "1 kg"), "cut-bird"))
                .hasMessageContaining("--out");
        assertThatThrownBy(() -> run(trials, Map.of("--in", "1 kg", "--out", "much"), "cut-bird"))
                .hasMessageContaining("item=weight");
        assertThatThrownBy(() -> run(trials, Map.of("--in", "1 kg", "--out", "wing=1 g"), "cut-bird"))
                .isInstanceOfSatisfying(
                        VerbException.class, no -> assertThat(no.outcome()).isEqualTo(Outcome.REJECTED));
        assertThatThrownBy(() -> run(trials, Map.of("--accept", "x"), "cut-bird"))
                .hasMessageContaining("numbers");
        assertThatThrownBy(() -> run(trials, Map.of("--tried", "true", "--accept", "all"), "cut-bird"))
                .hasMessageContaining("one thing");
        assertThatThrownBy(() -> run(revisions, Map.of(), "nothing")).hasMessageContaining("never was");
        assertThatThrownBy(() -> run(revisions, Map.of("--between", "1,2,3"), "cut-bird"))
                .hasMessageContaining("two revisions");
        assertThatThrownBy(() -> run(revisions, Map.of("--restore", "9"), "cut-bird"))
                .hasMessageContaining("choose another");
        assertThatThrownBy(() -> run(recipes, Map.of("--kind", "soup"))).hasMessageContaining("no kind");
        assertThatThrownBy(() -> run(recipes, Map.of("--cost", "much"))).hasMessageContaining("--cost 4.50");
        assertThatThrownBy(() -> run(card, Map.of(), "nothing")).hasMessageContaining("no recipe");
    }

    @Test
    void comparesAndBringsBackRevisions() throws VerbException {
        range.writing.save(range.recipe("cut-bird").withNotes("Sharp knife."), 1);

        assertThat(run(revisions, Map.of(), "cut-bird").json().toString())
                .contains("number=2")
                .contains("number=1");
        assertThat(run(revisions, Map.of("--between", "1"), "cut-bird").lines())
                .containsExactly("Notes, text: {+Sharp knife.+}");
        assertThat(run(revisions, Map.of("--between", "2 2"), "cut-bird").lines())
                .containsExactly("Nothing differs.");
        run(revisions, Map.of("--restore", "1"), "cut-bird");
        assertThat(range.recipe("cut-bird").notes()).isEmpty();
    }

    @Test
    void weighsABatch() throws VerbException {
        Report report = run(balance, Map.of(), "cut-bird");

        assertThat(report.outcome()).isEqualTo(Outcome.DONE);
        assertThat(report.json().toString()).contains("in=2000 g, out=1200 g, lost=800 g");
        assertThat(report.lines()).anyMatch(line -> line.startsWith("lost in the making") && line.endsWith("800 g"));
    }
}
