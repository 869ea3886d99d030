package etamine.catalogue.internal;

import etamine.base.Subject;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.supply.Delivery;
import etamine.kitchen.supply.Supplier;
import etamine.kitchen.today.DayMark;
import etamine.kitchen.today.DayMarkSource;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Puts the cut-offs still ahead on the week ribbon. */
@Component
public final class CutOffMarks implements DayMarkSource {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final LiveCatalogue catalogue;
    private final Kitchen kitchen;

    /** Reads the catalogue by the house's clock. */
    @Activate
    public CutOffMarks(@Reference LiveCatalogue catalogue, @Reference Kitchen kitchen) {
        this.catalogue = catalogue;
        this.kitchen = kitchen;
    }

    @Override
    public List<DayMark> marks(LocalDate from, LocalDate to) {
        List<DayMark> marks = new ArrayList<>();
        for (Supplier supplier : catalogue.suppliers().values()) {
            int ahead = supplier.cutOff().map(cutOff -> cutOff.daysBefore()).orElse(1);
            new DeliveryDays(kitchen.house().zone())
                    .all(supplier, from, to.plusDays(ahead))
                    .filter(delivery -> delivery.orderBy()
                            .toInstant()
                            .isAfter(kitchen.clock().instant()))
                    .forEach(delivery -> mark(supplier, delivery, from, to, marks));
        }
        return marks;
    }

    private static void mark(Supplier supplier, Delivery delivery, LocalDate from, LocalDate to, List<DayMark> marks) {
        Subject subject = new Subject("supplier", supplier.id());
        LocalDate closes = delivery.orderBy().toLocalDate();
        if (!closes.isBefore(from) && !closes.isAfter(to)) {
            String day = delivery.day().getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
            String text = supplier.name() + ": order by " + TIME.format(delivery.orderBy()) + " for " + day;
            marks.add(new DayMark(closes, DayMark.Kind.CUT_OFF, text, subject));
        }
    }
}
