package etamine.costing.internal.live;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.costing.internal.paper.PaperDesk;
import etamine.costing.internal.words.CostJson;
import etamine.kitchen.cost.Costs;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.Items;
import etamine.measures.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code cost [ID...]}: what recipes cost. */
@Component
public final class CostVerb implements Verb {
    private final Costs costs;
    private final Items items;
    private final Kitchen kitchen;
    private final PaperDesk desk;

    /** The verb on the open book. */
    @Activate
    public CostVerb(
            @Reference Costs costs, @Reference Items items, @Reference Kitchen kitchen, @Reference PaperDesk desk) {
        this.costs = costs;
        this.items = items;
        this.kitchen = kitchen;
        this.desk = desk;
    }

    @Override
    public VerbUsage usage() {
        return PaperDesk.with(VerbUsage.of(
                "cost",
                "What recipes cost; to a file, the sheet of one recipe or without an id the price list",
                "[ID...]"));
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        List<RecipeCost> chosen = new ArrayList<>();
        Map<String, RecipeCost> all = call.arguments().isEmpty() ? costs.recipes() : Map.of();
        chosen.addAll(all.values());
        for (String id : call.arguments()) {
            chosen.add(costs.recipe(id)
                    .orElseThrow(() -> VerbException.wrongCall(
                            "There is no recipe \"" + id + "\". The verb recipes lists the ids there are.")));
        }
        boolean look = chosen.stream()
                .anyMatch(cost -> !cost.missing().isEmpty() || !cost.warnings().isEmpty());
        String currency = kitchen.house().currency().getCurrencyCode();
        List<String> lines = new ArrayList<>(call.arguments().isEmpty() ? overview(chosen, currency) : single(chosen));
        papers(call).forEach(file -> lines.add("Written: " + file));
        return new Report(look ? Outcome.LOOK : Outcome.DONE, CostJson.of(currency, chosen), lines);
    }

    private List<String> papers(VerbCall call) throws VerbException {
        if (call.arguments().size() > 1 && PaperDesk.asked(call)) {
            throw VerbException.wrongCall("A costing sheet is of one recipe; name one, or none for the price list.");
        }
        return desk.write(
                call,
                papers -> call.arguments().isEmpty()
                        ? papers.priceList()
                        : papers.costingSheet(call.arguments().get(0)));
    }

    private List<String> overview(List<RecipeCost> chosen, String currency) {
        TextTable plates =
                new TextTable("Plate", "", ">Cost " + currency, ">Net price", ">Food cost %", ">Contribution", "");
        TextTable others = new TextTable("Recipe", "", ">Batch " + currency, ">Portion", "");
        for (RecipeCost cost : chosen) {
            String mark = mark(cost);
            if (cost.plate().isPresent()) {
                PlateCost plate = cost.plate().get();
                plates.row(
                        cost.recipe(),
                        items.name(cost.recipe()),
                        text(plate.cost()),
                        text(plate.net()),
                        plate.foodCostPercent().map(Object::toString).orElse(""),
                        text(plate.contribution()),
                        mark);
            } else {
                String portion = cost.portion().map(CostVerb::text).orElse("");
                others.row(cost.recipe(), items.name(cost.recipe()), text(cost.batch()), portion, mark);
            }
        }
        List<String> lines = new ArrayList<>(plates.lines());
        if (!lines.isEmpty() && !others.lines().isEmpty()) {
            lines.add("");
        }
        lines.addAll(others.lines());
        return lines.isEmpty() ? List.of("There are no recipes to cost yet.") : lines;
    }

    private static String mark(RecipeCost cost) {
        String missing = cost.missing().isEmpty() ? "" : "no price: " + String.join(", ", cost.missing());
        String bound = cost.complete() ? "" : missing.isEmpty() ? "at least; see check" : "at least; " + missing;
        boolean over = cost.plate().filter(PlateCost::overTarget).isPresent();
        return bound + (over ? (bound.isEmpty() ? "" : "; ") + "above target" : "");
    }

    private List<String> single(List<RecipeCost> chosen) {
        List<String> lines = new ArrayList<>();
        for (RecipeCost cost : chosen) {
            lines.add(cost.recipe() + ": " + (cost.complete() ? "" : "at least; ") + "batch " + text(cost.batch())
                    + cost.portion()
                            .map(portion -> ", portion " + text(portion))
                            .orElse("")
                    + plate(cost.plate()));
            TextTable table = new TextTable("Item", ">Quantity", ">As purchased", ">Price", ">Cost", "Source");
            cost.lines()
                    .forEach(line -> table.row(
                            items.name(line.item())
                                    + line.as().map(as -> ", " + as).orElse(""),
                            line.quantity().toString(),
                            line.asPurchased().map(CostJson::text).orElse("?"),
                            line.unitPrice().map(CostJson::text).orElse("none"),
                            line.cost().map(CostVerb::text).orElse("missing"),
                            line.source()));
            lines.addAll(table.lines());
            cost.makes()
                    .forEach(made -> lines.add("makes " + made.quantity() + " " + items.name(made.item()) + " at "
                            + CostJson.text(made.unitCost()) + (made.credited() ? ", credited" : "")));
            cost.plate().ifPresent(figures -> lines.addAll(PlateLines.of(figures)));
            cost.drinks().forEach(drink -> lines.add(PlateLines.of(drink, items.name(drink.drink()))));
            cost.warnings().forEach(warning -> lines.add("Look: " + warning.text()));
            lines.add("");
        }
        return lines;
    }

    private static String plate(Optional<PlateCost> plate) {
        return plate.map(figures -> ", plate " + text(figures.cost()) + ", net price " + text(figures.net())
                        + figures.foodCostPercent()
                                .map(percent -> ", food cost " + percent + " %")
                                .orElse("")
                        + ", contribution " + text(figures.contribution()))
                .orElse("");
    }

    private static String text(Money money) {
        return money.rounded().toString();
    }
}
