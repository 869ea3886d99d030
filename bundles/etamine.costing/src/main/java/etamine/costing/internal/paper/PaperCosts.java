package etamine.costing.internal.paper;

import etamine.costing.ButcherSheet;
import etamine.costing.CostPaper;
import etamine.costing.CostPapers;
import etamine.costing.MenuReport;
import etamine.costing.Statement;
import etamine.costing.WeekCost;
import etamine.costing.internal.words.LikelyIds;
import etamine.documents.Block;
import etamine.documents.Documents;
import etamine.documents.Paper;
import etamine.documents.Workbook;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.measures.MeasureStyle;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Lays costing's papers out. */
@Component
public final class PaperCosts implements CostPapers {
    private final Documents documents;
    private final Costs costs;
    private final Items items;
    private final Kitchen kitchen;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Recipes recipes;

    /** Papers of those costs. */
    @Activate
    public PaperCosts(
            @Reference Documents documents,
            @Reference Costs costs,
            @Reference Items items,
            @Reference Kitchen kitchen) {
        this.documents = documents;
        this.costs = costs;
        this.items = items;
        this.kitchen = kitchen;
    }

    private Map<String, Recipe> all() {
        return Optional.ofNullable(recipes).map(Recipes::all).orElse(Map.of());
    }

    @Override
    public CostPaper costingSheet(String recipe) {
        RecipeCost cost = costs.recipe(recipe)
                .orElseThrow(() -> new IllegalArgumentException("There is no recipe “" + recipe + "”."
                        + LikelyIds.hint(recipe, costs.recipes().keySet())));
        CostingSheetPaper sheet = new CostingSheetPaper(
                cost,
                Optional.ofNullable(all().get(recipe)),
                items,
                kitchen.house().measures());
        return paper(sheet.title(), sheet.blocks(), sheet.lines().sheet(sheet.title()), false);
    }

    @Override
    public CostPaper priceList() {
        PriceListPaper list = new PriceListPaper(costs, all());
        return paper("Prices and costs", list.blocks(), list.table().sheet("Prices"), true);
    }

    @Override
    public CostPaper menu(MenuReport report) {
        MenuPaper menu = new MenuPaper(report);
        String days = report.days().map(found -> ", sales of " + found).orElse("");
        return paper("Menu analysis" + days, menu.blocks(), menu.table().sheet("Menu"), true);
    }

    @Override
    public CostPaper statement(Statement statement) {
        StatementPaper paper = new StatementPaper(statement);
        Workbook.Sheet variances = paper.variances().sheet("Variance");
        Workbook.Sheet steps = paper.steps().sheet("Statement");
        return new LaidOutPaper(
                documents,
                page("Statement of " + statement.days(), paper.blocks(), true),
                new Workbook(List.of(variances, steps)));
    }

    @Override
    public CostPaper weeks(List<WeekCost> weeks) {
        WeeksPaper paper = new WeeksPaper(weeks);
        return paper("Food cost by week", paper.blocks(), paper.table().sheet("Weeks"), false);
    }

    @Override
    public CostPaper butcher(ButcherSheet sheet) {
        ButcherPaper paper = new ButcherPaper(sheet);
        return paper(
                "Butcher's test: " + sheet.name(), paper.blocks(), paper.table().sheet("Test"), true);
    }

    private CostPaper paper(String title, List<Block> blocks, Workbook.Sheet sheet, boolean across) {
        return new LaidOutPaper(documents, page(title, blocks, across), Workbook.of(sheet));
    }

    private Paper page(String title, List<Block> blocks, boolean across) {
        boolean us = kitchen.house().measures() == MeasureStyle.US;
        Paper.Sheet sheet = Paper.Sheet.of(us ? Paper.Size.LETTER : Paper.Size.A4);
        return new Paper(
                title,
                kitchen.house().name() + ", " + kitchen.today(),
                blocks,
                "Amounts in " + kitchen.house().currency().getCurrencyCode()
                        + ", without tax unless said. Reckoned exactly, rounded once.",
                across ? sheet.across() : sheet);
    }
}
