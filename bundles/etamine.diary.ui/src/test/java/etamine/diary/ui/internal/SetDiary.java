package etamine.diary.ui.internal;

import etamine.diary.ServiceDiary;
import etamine.kitchen.covers.Sale;
import etamine.kitchen.covers.WrittenUse;
import etamine.measures.Ratio;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

/** A diary in memory. */
final class SetDiary implements ServiceDiary {
    final Map<LocalDate, Integer> covers = new TreeMap<>();
    final Map<String, Ratio> mix = new TreeMap<>();
    final List<Sale> sales = new ArrayList<>();
    final List<WrittenUse> written = new ArrayList<>();

    @Override
    public Map<LocalDate, Integer> covers(LocalDate from, LocalDate to) {
        Map<LocalDate, Integer> days = new TreeMap<>(covers);
        days.keySet().removeIf(day -> day.isBefore(from) || day.isAfter(to));
        return days;
    }

    @Override
    public Map<String, Ratio> mix() {
        return mix;
    }

    @Override
    public List<Sale> sales(LocalDate from, LocalDate to) {
        return sales.stream()
                .filter(sale -> !sale.date().isBefore(from) && !sale.date().isAfter(to))
                .toList();
    }

    @Override
    public List<WrittenUse> writtenUse(LocalDate from, LocalDate to) {
        return written.stream()
                .filter(use -> !use.date().isBefore(from) && !use.date().isAfter(to))
                .toList();
    }

    @Override
    public void setCovers(Map<LocalDate, OptionalInt> days) {
        days.forEach((day, number) -> {
            covers.remove(day);
            number.ifPresent(known -> covers.put(day, known));
        });
    }

    @Override
    public void setMix(String recipe, Ratio perCover) {
        mix.put(recipe, perCover);
    }

    @Override
    public void removeMix(String recipe) {
        mix.remove(recipe);
    }

    @Override
    public void setUse(WrittenUse use) {
        removeUse(use.date(), use.item());
        written.add(use);
    }

    @Override
    public void removeUse(LocalDate date, String item) {
        written.removeIf(use -> use.date().equals(date) && use.item().equals(item));
    }

    @Override
    public void setSold(LocalDate date, String recipe, long sold) {
        sales.removeIf(sale -> sale.date().equals(date) && sale.recipe().equals(recipe));
        if (sold > 0) {
            sales.add(new Sale(date, recipe, sold));
        }
    }
}
