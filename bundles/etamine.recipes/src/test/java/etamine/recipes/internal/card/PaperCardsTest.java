package etamine.recipes.internal.card;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Printout;
import etamine.documents.Block;
import etamine.documents.Documents;
import etamine.documents.Paper;
import etamine.documents.Workbook;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Quantity;
import etamine.recipes.AllergenState;
import etamine.recipes.Cards;
import etamine.recipes.Cards.Card;
import etamine.recipes.internal.Range;
import etamine.recipes.internal.allergen.RolledAllergens;
import etamine.testing.SetKitchen;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What stands on the cards, read from the papers themselves. */
class PaperCardsTest {
    private final Range range = new Range();
    private final Drawer drawer = new Drawer();
    private final PaperCards cards = new PaperCards(
            range.shelf,
            range::known,
            range.made,
            range.scaling,
            new RolledAllergens(range::known, range.made),
            drawer);

    @BeforeEach
    void fillTheBook() {
        cards.bindKitchen(SetKitchen.at("2026-11-24T09:00:00Z"));
        range.item("celeriac", "kg", List.of(Range.prepared("diced", "0.74", "1 cup = 156 g")));
        range.allergens("cream", Set.of("milk"), Set.of(), true);
        range.allergens("walnut", Set.of("walnut"), Set.of("sesame"), true);
        range.load("""
                {"id": "puree", "name": "Celeriac purée", "kind": "component",
                 "uses": [{"item": "celeriac", "quantity": "2 cup", "as": "diced", "basis": "EP"},
                          {"item": "cream", "quantity": "120 g", "or": ["walnut"]}],
                 "makes": [{"item": "puree", "quantity": "380 g"}], "portion": "70 g", "keeps": "P3D", "tested": 3,
                 "steps": [{"id": "boil", "text": "Simmer.", "hands": "PT5M", "unattended": "PT25M",
                            "equipment": "hob ring", "temperature": "85 °C", "holds": "PT30M", "station": "veg"},
                           {"id": "blend", "text": "Blend.", "after": ["boil"]}],
                 "notes": "Pass twice.", "station": "sauce"}
                """, """
                {"id": "plate", "name": "Purée on a plate", "kind": "plate",
                 "uses": [{"item": "puree", "quantity": "1 portion"}],
                 "makes": [{"item": "plate", "quantity": "1 portion"}], "menuPrice": "9.00",
                 "drinks": [{"recipe": "water", "level": "house"}],
                 "steps": [{"id": "1", "text": "Spoon."}]}
                """, """
                {"id": "water", "name": "Water", "kind": "drink", "uses": [{"item": "celeriac", "quantity": "1 g"}],
                 "makes": [{"item": "water", "quantity": "1 portion"}]}
                """, """
                {"id": "parts", "name": "Taken apart", "kind": "breakdown", "uses": [{"item": "celeriac", "quantity": "3 kg"}],
                 "makes": [{"item": "heart", "quantity": "1 kg"}, {"item": "peel", "quantity": "1 kg"}]}
                """);
    }

    /** 2 cups of 156 g at a trim yield of 0.74 are 312 / 0.74 = 421.6 g as purchased - computed. */
    @Test
    void showsAmountsPreparedExactAndAsPurchased() {
        String paper = text(card("puree", cards.usual()));
        assertThat(paper)
                .contains("Measure, Item, Prepared, Basis")
                .contains("2 cup, celeriac, diced, EP")
                .contains("420 g")
                .contains("cream or walnut");
    }

    @Test
    void showsStepsWithTimesAndWhatTheyNeed() {
        assertThat(text(card("puree", cards.usual())))
                .contains("1, Simmer., 5 min, 25 min, 85 °C, hob ring, 30 min, veg")
                .contains("2, Blend.");
    }

    @Test
    void showsFactsNotesRevisionAndDay() {
        Paper paper = card("puree", cards.usual());
        assertThat(text(paper))
                .contains("Makes = 380 g")
                .contains("Portion = 70 g")
                .contains("Keeps = 3 days")
                .contains("Station = sauce")
                .contains("tested 3 times")
                .contains("Pass twice.");
        assertThat(paper.footer())
                .contains("Revision " + range.writing.revision("puree") + " of puree")
                .contains("printed 24 November 2026")
                .contains("Test kitchen");
    }

    @Test
    void sayTheWayAllergensComeInAndTheCaution() {
        String paper = text(card("plate", cards.usual()));
        assertThat(paper)
                .contains("Milk, contains, Celeriac purée → cream")
                .contains("Celeriac purée → or walnut")
                .contains("All others, unknown, not established: Celeriac purée → celeriac")
                .contains("! " + Allergens.CAUTION)
                .contains("never safety limits");
    }

    /** 52 portions of 70 g are 3,640 g, of 380 g each batch: 9.579 times - computed. */
    @Test
    void scalesToPortionsAndKeepsTheExactAmountBesideTheMeasuredOne() {
        Paper paper = card("puree", cards.usual().forAmount(Optional.of(Quantity.parse("52 portion"))));
        assertThat(paper.subtitle()).isEqualTo("Recipe card for 52 portions, 9.579 times the recipe");
        assertThat(text(paper)).contains("exactly 3640 g").contains("1149.474 g");
    }

    @Test
    void showOnePlateBesideAllOfThem() {
        Paper paper = card("plate", cards.usual().forAmount(Optional.of(Quantity.parse("52 portion"))));
        assertThat(text(paper))
                .contains("One plate, In all, Item")
                .contains("1 portion, 70 g, 52 portions")
                .contains("Drinks = Water (house)");
    }

    @Test
    void showWhatComesOutOfABreakdown() {
        assertThat(text(card("parts", cards.usual())))
                .contains("What comes out")
                .contains("1 kg, Peel");
    }

    @Test
    void layOnTheSheetThatWasAskedFor() {
        assertThat(cards.usual().sheet()).isEqualTo(Cards.Sheet.A4);
        Paper paper = card("puree", cards.usual().on(Cards.Sheet.LETTER).large(true));
        assertThat(paper.sheet()).isEqualTo(new Paper.Sheet(Paper.Size.LETTER, false, Paper.Print.LARGE));
    }

    @Test
    void sayWhyThereIsNoCard() {
        assertThat(cards.card("nothing", cards.usual())).isInstanceOf(Card.Impossible.class);
        Card card = cards.card("puree", cards.usual().forAmount(Optional.of(Quantity.parse("3 sheet"))));
        assertThat(((Card.Impossible) card).text()).contains("380 g");
    }

    @Test
    void markEveryStateOfTheMatrixByItsOwnShape() {
        assertThat(Stream.of(AllergenState.values()).map(AllergenMatrix::mark)).doesNotHaveDuplicates();
        cards.allergens(DeclarationList.EU, cards.usual());
        Paper paper = drawer.latest();
        assertThat(paper.sheet().landscape()).isTrue();
        Block.Grid matrix = (Block.Grid) paper.blocks().stream()
                .filter(Block.Grid.class::isInstance)
                .findFirst()
                .orElseThrow();
        List<String> groups =
                matrix.columns().stream().map(Block.Column::heading).toList();
        assertThat(groups).hasSize(15);
        List<String> plate = matrix.rows().get(0);
        assertThat(plate.get(0)).isEqualTo("Purée on a plate");
        assertThat(plate.get(groups.indexOf("Milk"))).isEqualTo("●");
        assertThat(plate.get(groups.indexOf("Sesame"))).isEqualTo("○");
        assertThat(plate.get(groups.indexOf("Lupin"))).isEqualTo("?");
        assertThat(matrix.rows()).hasSize(2); // the plate and the drink, neither component nor breakdown
        assertThat(text(paper)).contains(Allergens.CAUTION).contains("walnut").contains("○  may contain");
        assertThat(paper.subtitle()).contains("24 November 2026");
    }

    @Test
    void leaveArchivedPlatesOutOfTheMatrix() {
        Recipe plate = range.recipe("plate");
        range.writing.save(plate.withStanding(plate.standing().withArchived(true)), range.writing.revision("plate"));
        cards.allergens(DeclarationList.US, cards.usual());
        assertThat(text(drawer.latest())).doesNotContain("Purée on a plate");
    }

    private Paper card(String id, Cards.Terms terms) {
        assertThat(cards.card(id, terms)).isInstanceOf(Card.Laid.class);
        return drawer.latest();
    }

    /** All text of a paper, cells between commas. */
    private static String text(Paper paper) {
        List<String> lines = new ArrayList<>(List.of(paper.title(), paper.subtitle()));
        paper.blocks().forEach(block -> put(block, lines));
        return String.join("\n", lines);
    }

    private static void put(Block block, List<String> lines) {
        if (block instanceof Block.Heading heading) {
            lines.add(heading.text());
        } else if (block instanceof Block.Text text) {
            lines.add(text.text());
        } else if (block instanceof Block.Caution caution) {
            lines.add("! " + caution.text());
        } else if (block instanceof Block.Facts facts) {
            facts.pairs().forEach(pair -> lines.add(pair.label() + " = " + pair.value()));
        } else if (block instanceof Block.Grid grid) {
            lines.add(String.join(
                    ", ", grid.columns().stream().map(Block.Column::heading).toList()));
            grid.rows().forEach(row -> lines.add(String.join(", ", row)));
        } else if (block instanceof Block.Together together) {
            together.blocks().forEach(each -> put(each, lines));
        }
    }

    /** Keeps the papers that it is given. */
    private static final class Drawer implements Documents {
        private final List<Paper> papers = new ArrayList<>();

        Paper latest() {
            return papers.get(papers.size() - 1);
        }

        @Override
        public Printout printout(Paper paper) {
            papers.add(paper);
            return new Printout() {
                @Override
                public String title() {
                    return paper.title();
                }

                @Override
                public void pdf(Path file) {
                    throw new AssertionError("not written here");
                }

                @Override
                public void html(Path file) {
                    throw new AssertionError("not written here");
                }

                @Override
                public void pages(int dotsPerInch, PageSink sink) {
                    throw new AssertionError("not drawn here");
                }
            };
        }

        @Override
        public void pdf(Paper paper, Path file) {
            throw new AssertionError("not written here");
        }

        @Override
        public void html(Paper paper, Path file) {
            throw new AssertionError("not written here");
        }

        @Override
        public void csv(Block.Grid grid, Path file) {
            throw new AssertionError("not written here");
        }

        @Override
        public void csv(Workbook.Sheet sheet, Path file) {
            throw new AssertionError("not written here");
        }

        @Override
        public void xlsx(Workbook workbook, Path file) {
            throw new AssertionError("not written here");
        }
    }
}
