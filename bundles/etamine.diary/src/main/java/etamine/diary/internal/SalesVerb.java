package etamine.diary.internal;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.diary.ServiceDiary;
import etamine.kitchen.covers.Sale;
import etamine.kitchen.house.Kitchen;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code sales}: lists what was sold, or notes what was sold of one recipe on one day. */
@Component
public final class SalesVerb implements Verb {
    private static final int WEEKS_SHOWN = 4;
    private static final int NOTING = 3;

    private final ServiceDiary diary;
    private final Kitchen kitchen;

    /** The verb of the open diary. */
    @Activate
    public SalesVerb(@Reference ServiceDiary diary, @Reference Kitchen kitchen) {
        this.diary = diary;
        this.kitchen = kitchen;
    }

    @Override
    public VerbUsage usage() {
        String summary = "what was sold; with a date, a recipe and a number, notes it";
        return VerbUsage.of("sales", summary, "[DATE]", "[RECIPE]", "[N]")
                .with("--from", "DATE", "first day listed; four weeks ago when not given")
                .with("--to", "DATE", "last day listed; today when not given");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        List<String> given = call.arguments();
        if (given.size() == NOTING) {
            LocalDate date = CallValues.date(given.get(0));
            diary.setSold(date, given.get(1), CallValues.number(given.get(2), "portions"));
            return report(diary.sales(date, date));
        }
        if (!given.isEmpty()) {
            throw VerbException.wrongCall("Give a date, a recipe and the number sold, or none of them to list sales.");
        }
        LocalDate to =
                CallValues.date(call.option("--to").orElse(kitchen.today().toString()));
        LocalDate from = CallValues.date(
                call.option("--from").orElse(to.minusWeeks(WEEKS_SHOWN).toString()));
        return report(diary.sales(from, to));
    }

    private static Report report(List<Sale> sales) {
        List<Map<String, Object>> json = new ArrayList<>();
        TextTable table = new TextTable("Date", "Recipe", ">Sold");
        for (Sale sale : sales) {
            json.add(JsonMap.of("date", sale.date().toString(), "recipe", sale.recipe(), "sold", sale.sold()));
            table.row(sale.date().toString(), sale.recipe(), String.valueOf(sale.sold()));
        }
        List<String> lines = sales.isEmpty() ? List.of("No sales are noted for these days.") : table.lines();
        return Report.done(Map.of("sales", json), lines);
    }
}
