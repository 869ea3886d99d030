package etamine.costing.internal.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Printout;
import etamine.costing.CostPaper;
import etamine.costing.MenuAnalysis.Comparison;
import etamine.costing.MenuReport;
import etamine.costing.internal.larder.Larder;
import etamine.costing.internal.larder.Sales;
import etamine.costing.internal.menu.EngineeredMenu;
import etamine.documents.Block;
import etamine.documents.Documents;
import etamine.documents.Paper;
import etamine.documents.Workbook;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.recipe.Recipe;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PaperCostsTest {
    private final Larder larder = new Larder();
    private final Sales sales = new Sales();
    private final Kept kept = new Kept();

    /** Remembers by ending what was to be written. */
    private static final class Kept implements Documents {
        private final List<String> written = new ArrayList<>();

        @Override
        public void pdf(Paper paper, Path file) {
            written.add("pdf " + paper.title());
        }

        @Override
        public void html(Paper paper, Path file) {
            written.add("html " + paper.title());
        }

        @Override
        public void csv(Block.Grid grid, Path file) {
            written.add("grid");
        }

        @Override
        public void csv(Workbook.Sheet sheet, Path file) {
            written.add("csv " + sheet.name());
        }

        @Override
        public void xlsx(Workbook workbook, Path file) {
            written.add("xlsx " + workbook.sheets().size());
        }

        @Override
        public Printout printout(Paper paper) {
            throw new AssertionError("Nobody asks for a printout here.");
        }
    }

    private PaperCosts papers() {
        PaperCosts papers = new PaperCosts(kept, larder.costs(), larder.itemList, larder);
        papers.recipes = larder.recipeList;
        return papers;
    }

    private void plate(String id, String cost, String price) {
        larder.bought(id + "-goods", cost, "1 ea")
                .recipe(id)
                .uses("1 ea", id + "-goods")
                .makes("1 portion", id)
                .sold(price, "10", "0")
                .done();
    }

    private void archive(String id) {
        Recipe recipe = larder.recipeList.find(id).orElseThrow();
        larder.put(recipe.withStanding(recipe.standing().withArchived(true)));
    }

    private MenuReport menu() {
        EngineeredMenu menu = new EngineeredMenu(larder.costs(), larder);
        menu.recipes = larder.recipeList;
        menu.diary = sales;
        return menu.report(Optional.empty(), Comparison.WITHIN_KIND, Set.of());
    }

    private static Workbook.Sheet sheet(CostPaper paper) {
        return ((LaidOutPaper) paper).table().sheets().get(0);
    }

    private static List<Workbook.Cell> column(CostPaper paper, String heading) {
        int at = sheet(paper).headings().indexOf(heading);
        return sheet(paper).rows().stream().map(row -> row.get(at)).toList();
    }

    private static List<String> words(CostPaper paper, String heading) {
        return column(paper, heading).stream()
                .map(cell -> ((Workbook.Words) cell).text())
                .toList();
    }

    private static String figure(CostPaper paper, String heading) {
        return ((Workbook.Figure) column(paper, heading).get(0)).value().toPlainString();
    }

    private static String page(CostPaper paper) {
        return ((LaidOutPaper) paper).paper().blocks().toString();
    }

    @Test
    void putsTheFiguresOfThePlateOnItsSheet() {
        plate("duck", "6.00", "26.40");
        RecipeCost cost = larder.costs().recipe("duck").orElseThrow();
        PlateCost plate = cost.plate().orElseThrow();
        CostPaper paper = papers().costingSheet("duck");
        assertThat(figure(paper, "Cost")).isEqualTo("6.0000");
        assertThat(plate.net()).hasToString("24.00");
        assertThat(((LaidOutPaper) paper).paper().blocks())
                .filteredOn(Block.Facts.class::isInstance)
                .flatExtracting(block -> ((Block.Facts) block).pairs())
                .contains(
                        new Block.Facts.Pair("Plate cost", "6.00"),
                        new Block.Facts.Pair("Price without tax", "24.00"),
                        new Block.Facts.Pair("Contribution", "18.00"),
                        new Block.Facts.Pair(
                                "Food cost", plate.foodCostPercent().orElseThrow() + " %"));
    }

    @Test
    void listsThePriceWithItsCost() {
        plate("duck", "6.00", "26.40");
        CostPaper paper = papers().priceList();
        assertThat(figure(paper, "Price with tax")).isEqualTo("26.40");
        assertThat(figure(paper, "Price net")).isEqualTo("24.0000");
        assertThat(figure(paper, "Cost")).isEqualTo("6.0000");
        assertThat(figure(paper, "Contribution")).isEqualTo("18.0000");
    }

    @Test
    void saysThatAFigureIsALowerBound() {
        larder.unpriced("truffle", "kg")
                .recipe("dear")
                .uses("5 g", "truffle")
                .makes("1 portion", "dear")
                .sold("20.00", "0", "0")
                .done();
        assertThat(((LaidOutPaper) papers().costingSheet("dear"))
                        .paper()
                        .blocks()
                        .get(0))
                .isEqualTo(new Block.Caution(
                        "A price or a measure is missing, so every figure here is at least that: truffle"));
        assertThat(words(papers().costingSheet("dear"), "Cost")).containsExactly("missing");
        assertThat(words(papers().priceList(), "Look")).containsExactly("cost at least that");
        sales.sold("2026-11-20", "dear", 3);
        assertThat(words(papers().menu(menu()), "Item")).containsExactly("dear (cost at least that)");
    }

    @Test
    void leavesArchivedRecipesOffThePriceListAndTheMenu() {
        plate("duck", "6.00", "26.40");
        plate("gone", "5.00", "20.00");
        archive("gone");
        sales.sold("2026-11-20", "duck", 3);
        assertThat(words(papers().priceList(), "Id")).containsExactly("duck");
        assertThat(words(papers().menu(menu()), "Item")).containsExactly("duck");
        assertThat(page(papers().priceList())).doesNotContain("gone");
    }

    @Test
    void keepsNamesThatLookLikeSomethingElseAsText() {
        plate("=1+1", "6.00", "26.40");
        plate("<b>", "5.00", "20.00");
        sales.sold("2026-11-20", "=1+1", 3);
        assertThat(words(papers().priceList(), "Name")).containsExactlyInAnyOrder("=1+1", "<b>");
        assertThat(words(papers().menu(menu()), "Item")).containsExactlyInAnyOrder("=1+1", "<b>");
        assertThat(page(papers().priceList())).contains("=1+1", "<b>");
    }

    @Test
    void putsTheFiguresOfTheMenuAnalysisOnPaper() {
        plate("duck", "6.00", "26.40");
        sales.sold("2026-11-20", "duck", 3);
        CostPaper paper = papers().menu(menu());
        assertThat(figure(paper, "Sold")).isEqualTo("3");
        assertThat(figure(paper, "Leaves in all")).isEqualTo("54.0000");
        assertThat(page(paper)).contains("54.00", MenuReport.CAUTION);
    }

    @Test
    void writesWhatTheEndingSays() throws Exception {
        CostPaper paper = papers().priceList();
        for (String name : List.of("a.PDF", "a.html", "a.csv", "a.xlsx")) {
            paper.write(Path.of(name));
        }
        assertThat(kept.written)
                .containsExactly("pdf Prices and costs", "html Prices and costs", "csv Prices", "xlsx 1");
        assertThatThrownBy(() -> paper.write(Path.of("a.txt"))).hasMessageContaining("end it in .pdf");
        assertThatThrownBy(() -> papers().costingSheet("none")).hasMessageContaining("There is no recipe");
    }
}
