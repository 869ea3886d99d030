package etamine.diary.internal;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.diary.ServiceDiary;
import etamine.kitchen.house.Kitchen;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code covers}: lists the covers of the coming days, or sets those of one. */
@Component
public final class CoversVerb implements Verb {
    private static final int FORTNIGHT = 14;

    private final ServiceDiary diary;
    private final Kitchen kitchen;

    /** The verb of the open diary. */
    @Activate
    public CoversVerb(@Reference ServiceDiary diary, @Reference Kitchen kitchen) {
        this.diary = diary;
        this.kitchen = kitchen;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("covers", "covers of the coming days; with a date and a number, sets them", "[DATE]", "[N]")
                .with("--from", "DATE", "first day listed; today when not given")
                .with("--days", "N", "how many days; 14 when not given");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        List<String> given = call.arguments();
        if (given.size() == 1 || given.size() > 2) {
            throw VerbException.wrongCall("Give a date and a number of covers, or neither to list them.");
        }
        LocalDate from =
                CallValues.date(call.option("--from").orElse(kitchen.today().toString()));
        int days = CallValues.number(call.option("--days").orElse(String.valueOf(FORTNIGHT)), "days");
        if (given.size() == 2) {
            from = CallValues.date(given.get(0));
            days = 1;
            diary.setCovers(Map.of(from, OptionalInt.of(CallValues.number(given.get(1), "covers"))));
        }
        return report(diary.covers(from, from.plusDays(days - 1L)));
    }

    private static Report report(Map<LocalDate, Integer> covers) {
        List<Map<String, Object>> json = new ArrayList<>();
        TextTable table = new TextTable("Day", "Date", ">Covers");
        covers.forEach((date, number) -> {
            json.add(JsonMap.of("date", date.toString(), "covers", number));
            table.row(
                    date.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH),
                    date.toString(),
                    String.valueOf(number));
        });
        List<String> lines = covers.isEmpty() ? List.of("No covers are entered for these days.") : table.lines();
        return Report.done(Map.of("covers", json), lines);
    }
}
