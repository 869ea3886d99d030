package etamine.costing.internal.menu;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.costing.Days;
import etamine.costing.MenuAnalysis;
import etamine.costing.MenuAnalysis.Comparison;
import etamine.costing.MenuReport;
import etamine.costing.internal.paper.PaperDesk;
import etamine.costing.internal.words.Amounts;
import etamine.costing.internal.words.CallWords;
import etamine.kitchen.house.Kitchen;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code menu [ID...]}: the menu by popularity and contribution. */
@Component
public final class MenuVerb implements Verb {
    private final MenuAnalysis analysis;
    private final PaperDesk desk;
    private final Kitchen kitchen;

    /** The verb on the open book. */
    @Activate
    public MenuVerb(@Reference MenuAnalysis analysis, @Reference PaperDesk desk, @Reference Kitchen kitchen) {
        this.analysis = analysis;
        this.desk = desk;
        this.kitchen = kitchen;
    }

    @Override
    public VerbUsage usage() {
        return PaperDesk.with(VerbUsage.of("menu", "The menu by popularity and contribution", "[ID...]")
                .with("--from", "DATE", "first day of the sales; without days, all sales there are")
                .with("--to", "DATE", "last day of the sales")
                .with("--all", "", "compare everything together, plates with drinks"));
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        CallWords words = new CallWords(call);
        Optional<Days> days =
                words.saysDays() ? Optional.of(words.days(analysis::sold, kitchen.today())) : Optional.empty();
        Comparison how = call.has("--all") ? Comparison.TOGETHER : Comparison.WITHIN_KIND;
        MenuReport report = report(days, how, call.arguments());
        List<String> lines = lines(report);
        List<String> files = desk.write(call, papers -> papers.menu(report));
        files.forEach(file -> lines.add("Written: " + file));
        boolean look = report.groups().isEmpty() || !report.leftOut().isEmpty();
        return new Report(look ? Outcome.LOOK : Outcome.DONE, json(report, files), lines);
    }

    private MenuReport report(Optional<Days> days, Comparison how, List<String> only) throws VerbException {
        try {
            return analysis.report(days, how, new LinkedHashSet<>(only));
        } catch (IllegalArgumentException wrong) {
            throw VerbException.wrongCall(wrong.getMessage());
        }
    }

    private static Map<String, Object> json(MenuReport report, List<String> files) {
        Map<String, Object> json = new LinkedHashMap<>();
        report.days().ifPresent(days -> {
            json.put("from", days.from().toString());
            json.put("to", days.to().toString());
        });
        List<MenuReport.Group> groups = report.groups();
        if (groups.isEmpty()) {
            json.put("items", List.of());
        } else {
            json.putAll(group(groups.get(0)));
        }
        json.put("apart", groups.stream().skip(1).map(MenuVerb::group).toList());
        json.put("leftOut", report.leftOut().stream().map(MenuVerb::leftOut).toList());
        json.put("notes", report.notes());
        if (!files.isEmpty()) {
            json.put("files", files);
        }
        return json;
    }

    private static Map<String, Object> group(MenuReport.Group group) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("group", group.name());
        json.put("items", group.items().stream().map(MenuVerb::item).toList());
        json.put("sold", group.sold());
        json.put("averageContribution", Amounts.amount(group.averageContribution()));
        json.put("popularityCutPercent", group.popularityCutPercent().toPlainString());
        json.put("foodCostPercent", group.foodCostPercent().map(BigDecimal::toPlainString));
        json.put("totalCost", Amounts.amount(group.totalCost()));
        json.put("totalRevenue", Amounts.amount(group.totalRevenue()));
        json.put("totalContribution", Amounts.amount(group.totalContribution()));
        return json;
    }

    private static Map<String, Object> item(MenuReport.Item item) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("recipe", item.recipe());
        json.put("sold", item.sold());
        json.put("sharePercent", item.sharePercent().toPlainString());
        json.put("cost", Amounts.amount(item.cost()));
        json.put("price", Amounts.amount(item.price()));
        json.put("foodCostPercent", item.foodCostPercent().map(BigDecimal::toPlainString));
        json.put("contribution", Amounts.amount(item.contribution()));
        json.put("totalCost", Amounts.amount(item.totalCost()));
        json.put("totalRevenue", Amounts.amount(item.totalRevenue()));
        json.put("totalContribution", Amounts.amount(item.totalContribution()));
        json.put("margin", level(item.highMargin()));
        json.put("popularity", level(item.popular()));
        json.put("class", item.standing().name().toLowerCase(Locale.ROOT));
        if (item.lowerBound()) {
            json.put("lowerBound", true);
        }
        return json;
    }

    private static Map<String, Object> leftOut(MenuReport.LeftOut left) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("recipe", left.recipe());
        json.put("sold", left.sold());
        json.put("why", left.why());
        return json;
    }

    private static String level(boolean high) {
        return high ? "high" : "low";
    }

    private static List<String> lines(MenuReport report) {
        List<String> lines = new ArrayList<>();
        report.days().ifPresent(days -> lines.add("Sales of " + days + ", at today's costs and prices without tax."));
        for (MenuReport.Group group : report.groups()) {
            lines.add("");
            lines.addAll(table(group));
            lines.add(group.name() + ": " + group.sold() + " sold; a margin is high above "
                    + Amounts.text(group.averageContribution()) + ", popularity above " + group.popularityCutPercent()
                    + " %; food cost "
                    + group.foodCostPercent().map(percent -> percent + " %").orElse("not known") + ", contribution "
                    + Amounts.text(group.totalContribution()));
        }
        report.leftOut()
                .forEach(left -> lines.add("Left out: " + left.recipe() + ", " + left.sold() + " sold. " + left.why()));
        report.notes().forEach(lines::add);
        return lines;
    }

    private static List<String> table(MenuReport.Group group) {
        TextTable table = new TextTable(
                "Item", ">Sold", ">Share %", ">Cost", ">Price", ">Leaves", ">In all", "Margin", "Popularity", "Class");
        group.items()
                .forEach(item -> table.row(
                        item.name(),
                        String.valueOf(item.sold()),
                        item.sharePercent().toPlainString(),
                        item.cost().rounded() + (item.lowerBound() ? "+" : ""),
                        item.price().rounded().toString(),
                        item.contribution().rounded().toString(),
                        item.totalContribution().rounded().toString(),
                        level(item.highMargin()),
                        level(item.popular()),
                        item.standing().name().toLowerCase(Locale.ROOT)));
        return table.lines();
    }
}
