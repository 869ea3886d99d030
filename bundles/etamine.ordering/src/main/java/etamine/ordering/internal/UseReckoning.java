package etamine.ordering.internal;

import etamine.base.Problem;
import etamine.kitchen.covers.Diary;
import etamine.kitchen.covers.WrittenUse;
import etamine.kitchen.recipe.Recipes;
import etamine.kitchen.recipe.Requirement;
import etamine.kitchen.use.ExpectedUse.DayUse;
import etamine.measures.Conversion;
import etamine.measures.Quantity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One reckoning of expected use. What a day takes is the difference between following the demand of all days up to it
 * and up to the day before, so that what is on hand, and what one batch makes for several days, counts once.
 */
final class UseReckoning {
    private static final long MORE_THAN_EVER = 1_000_000_000L;

    private final Neighbours neighbours;
    private final Diary diary;
    private final LocalDate from;
    private final LocalDate to;
    private final Map<String, Problem> problems = new LinkedHashMap<>();
    private final List<DayUse> uses = new ArrayList<>();

    UseReckoning(Neighbours neighbours, Diary diary, LocalDate from, LocalDate to) {
        this.neighbours = neighbours;
        this.diary = diary;
        this.from = from;
        this.to = to;
    }

    UseForecast run() {
        Map<LocalDate, List<WrittenUse>> written = new TreeMap<>();
        diary.writtenUse(from, to)
                .forEach(use -> written.computeIfAbsent(use.date(), day -> new ArrayList<>())
                        .add(use));
        Optional<Recipes> recipes = neighbours.recipes();
        Optional<ServicePortions> portions = recipes.map(known -> new ServicePortions(diary, known, from, to));
        Map<String, Quantity> demand = new TreeMap<>();
        for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
            List<WrittenUse> stated = written.getOrDefault(day, List.of());
            Map<String, DayUse> ofDay = new TreeMap<>();
            if (recipes.isPresent() && portions.isPresent()) {
                follow(recipes.get(), portions.get(), day, demand, stated).forEach(use -> ofDay.put(use.item(), use));
            }
            for (WrittenUse use : stated) {
                stated(use).ifPresent(line -> ofDay.put(use.item(), line));
            }
            ofDay.values().stream().filter(use -> use.quantity().signum() > 0).forEach(uses::add);
        }
        return new UseForecast(uses, List.copyOf(problems.values()));
    }

    private List<DayUse> follow(
            Recipes recipes,
            ServicePortions portions,
            LocalDate day,
            Map<String, Quantity> demand,
            List<WrittenUse> stated) {
        Map<String, Quantity> made = madeOf(recipes, stated);
        Map<String, Quantity> onHand = MadeStock.usableOn(day, neighbours);
        Map<String, Quantity> available = new TreeMap<>(onHand);
        made.forEach((item, quantity) -> available.put(item, Quantity.of(MORE_THAN_EVER, quantity.unit())));
        Requirement before = recipes.require(demand, available);
        portions.on(day).forEach((item, quantity) -> demand.merge(item, quantity, Quantity::plus));
        Requirement after = recipes.require(demand, available);
        DayNeed need = new DayNeed(day, portions.source(day));
        need.add(after, before);
        if (!made.isEmpty()) {
            need.add(recipes.require(made, onHand), nothing());
        }
        after.problems().forEach(problem -> problems.putIfAbsent(problem.where() + problem.text(), problem));
        return need.uses();
    }

    private static Requirement nothing() {
        return new Requirement(Map.of(), Map.of(), Map.of(), List.of());
    }

    private static Map<String, Quantity> madeOf(Recipes recipes, List<WrittenUse> stated) {
        Map<String, Quantity> made = new TreeMap<>();
        stated.stream()
                .filter(use -> recipes.maker(use.item()).isPresent())
                .forEach(use -> made.put(use.item(), use.quantity()));
        return made;
    }

    private Optional<DayUse> stated(WrittenUse use) {
        Conversion conversion = Counting.count(neighbours.item(use.item()), use.quantity());
        if (conversion instanceof Conversion.Converted counted) {
            return Optional.of(new DayUse(use.date(), use.item(), counted.quantity(), "written", Map.of()));
        }
        String where = "use/" + use.date() + "/" + use.item();
        String text = ((Conversion.Missing) conversion).text();
        problems.putIfAbsent(where, Problem.error("missing-equivalence", where, text));
        return Optional.empty();
    }
}
