package etamine.costing.internal.larder;

import etamine.kitchen.covers.Diary;
import etamine.kitchen.covers.Sale;
import etamine.kitchen.covers.WrittenUse;
import etamine.measures.Ratio;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A diary that knows only sales. */
public final class Sales implements Diary {
    private final List<Sale> sales = new ArrayList<>();

    public Sales sold(String day, String recipe, long portions) {
        sales.add(new Sale(LocalDate.parse(day), recipe, portions));
        return this;
    }

    @Override
    public Map<LocalDate, Integer> covers(LocalDate from, LocalDate to) {
        return Map.of();
    }

    @Override
    public Map<String, Ratio> mix() {
        return Map.of();
    }

    @Override
    public List<Sale> sales(LocalDate from, LocalDate to) {
        return sales.stream()
                .filter(sale -> !sale.date().isBefore(from) && !sale.date().isAfter(to))
                .toList();
    }

    @Override
    public List<WrittenUse> writtenUse(LocalDate from, LocalDate to) {
        return List.of();
    }
}
