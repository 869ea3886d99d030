package etamine.diary.internal;

import etamine.base.Subject;
import etamine.diary.ServiceDiary;
import etamine.kitchen.today.DayMark;
import etamine.kitchen.today.DayMarkSource;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Puts the covers of a day on the week ribbon. */
@Component
public final class CoversMarks implements DayMarkSource {
    private final ServiceDiary diary;

    /** Marks from the open diary. */
    @Activate
    public CoversMarks(@Reference ServiceDiary diary) {
        this.diary = diary;
    }

    @Override
    public List<DayMark> marks(LocalDate from, LocalDate to) {
        return diary.covers(from, to).entrySet().stream().map(CoversMarks::mark).toList();
    }

    private static DayMark mark(Map.Entry<LocalDate, Integer> day) {
        Subject subject = new Subject("covers", day.getKey().toString());
        return new DayMark(day.getKey(), DayMark.Kind.COVERS, words(day.getValue()), subject);
    }

    static String words(int covers) {
        return switch (covers) {
            case 0 -> "no covers";
            case 1 -> "1 cover";
            default -> covers + " covers";
        };
    }
}
