package etamine.costing.internal.butcher;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.costing.ButcherSheet;
import etamine.costing.ButcherSheet.Part;
import etamine.costing.ButcherSheet.Portion;
import etamine.costing.ButcherSheet.Usable;
import etamine.costing.ButcherTests;
import etamine.costing.internal.paper.PaperDesk;
import etamine.costing.internal.words.Amounts;
import etamine.costing.internal.words.CallWords;
import etamine.costing.internal.words.CostJson;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code butcher ID}: the test sheet of something taken apart, trimmed or cooked. */
@Component
public final class ButcherVerb implements Verb {
    private static final int FACTOR_PLACES = 4;

    private final ButcherTests tests;
    private final PaperDesk desk;

    /** The verb on the open book. */
    @Activate
    public ButcherVerb(@Reference ButcherTests tests, @Reference PaperDesk desk) {
        this.tests = tests;
        this.desk = desk;
    }

    @Override
    public VerbUsage usage() {
        return PaperDesk.with(
                VerbUsage.of("butcher", "The test sheet of something taken apart, with its factors", "[ID]")
                        .with("--dealer", "PRICE", "a new price, 12.40 a kg or \"5.60 / lb\"")
                        .with("--portion", "WEIGHT", "the size of a portion; without it, the recipe's")
                        .with("--portions", "N", "what N portions of each usable part take"));
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        if (call.arguments().isEmpty()) {
            return Report.done(Map.of("recipes", tests.recipes()), tests.recipes());
        }
        CallWords words = new CallWords(call);
        long portions = portions(words);
        ButcherSheet sheet = sheet(call.arguments().get(0), words);
        List<String> lines = lines(sheet, portions);
        List<String> files = desk.write(call, papers -> papers.butcher(sheet));
        files.forEach(file -> lines.add("Written: " + file));
        boolean look = sheet.dealer().isEmpty() || sheet.loss().signum() < 0;
        return new Report(look ? Outcome.LOOK : Outcome.DONE, ButcherJson.of(sheet, portions, files), lines);
    }

    private ButcherSheet sheet(String id, CallWords words) throws VerbException {
        try {
            return tests.sheet(id, words.price("--dealer"), words.quantity("--portion"));
        } catch (IllegalArgumentException wrong) {
            throw VerbException.wrongCall(wrong.getMessage());
        }
    }

    private static long portions(CallWords words) throws VerbException {
        BigDecimal count = words.number("--portions").orElse(BigDecimal.ZERO);
        if (count.signum() < 0 || count.stripTrailingZeros().scale() > 0 || count.precision() > 9) {
            throw VerbException.wrongCall("--portions wants a whole number such as 85.");
        }
        return count.longValue();
    }

    private static List<String> lines(ButcherSheet sheet, long portions) {
        List<String> lines = new ArrayList<>();
        lines.add(sheet.name() + ": " + Amounts.text(sheet.purchased()) + " of " + sheet.boughtName()
                + sheet.dealer().map(price -> " at " + CostJson.text(price)).orElse(", price not known") + ", "
                + Amounts.text(sheet.cost()) + " in all");
        lines.addAll(parts(sheet).lines());
        lines.add("Lost " + Amounts.text(sheet.loss()));
        sheet.asked().ifPresent(asked -> lines.add("At " + CostJson.text(asked) + ":"));
        for (Part part : sheet.usable()) {
            Usable usable = part.usable().orElseThrow();
            usable.askedPerKg()
                    .ifPresent(cost -> lines.add("  " + part.name() + " " + Amounts.text(cost) + " a usable kg"
                            + usable.portion()
                                    .flatMap(Portion::askedCost)
                                    .map(one -> ", a portion " + Amounts.text(one))
                                    .orElse("")));
            if (portions > 0) {
                sheet.forPortions(part, portions)
                        .ifPresent(need -> lines.add(portions + " portions of " + part.name() + " take "
                                + Amounts.text(need.usable()) + ": buy " + Amounts.text(need.purchased())));
            }
        }
        lines.add("Factors from exact weights and costs, rounded once.");
        sheet.notes().forEach(note -> lines.add("Look: " + note));
        return lines;
    }

    private static TextTable parts(ButcherSheet sheet) {
        TextTable table = new TextTable(
                "Part", ">Weight", ">%", ">Value", ">A kg", ">Factor/kg", ">Portion", ">Each", ">Factor/portion");
        for (Part part : sheet.parts()) {
            Optional<Usable> usable = part.usable();
            Optional<Portion> portion = usable.flatMap(Usable::portion);
            table.row(
                    part.name() + (usable.isPresent() ? "" : ", credited"),
                    Amounts.text(part.weight()),
                    part.percent().toPlainString(),
                    part.value().rounded().toString(),
                    usable.map(one -> one.perKg().rounded().toString()).orElse(""),
                    usable.flatMap(Usable::factor).map(ButcherVerb::factor).orElse(""),
                    portion.map(one -> Amounts.text(one.size()) + " x " + one.count())
                            .orElse(""),
                    portion.map(one -> one.cost().rounded().toString()).orElse(""),
                    portion.flatMap(Portion::factor).map(ButcherVerb::factor).orElse(""));
        }
        return table;
    }

    static String factor(BigDecimal factor) {
        return factor.setScale(FACTOR_PLACES, RoundingMode.HALF_UP).toPlainString();
    }
}
