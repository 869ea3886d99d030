package etamine.ordering.internal;

import etamine.kitchen.covers.Diary;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Recipes;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;

/**
 * The portions that a service takes: covers times menu mix where covers are entered, else the mean of what was sold on
 * that weekday.
 */
final class ServicePortions {
    private final Recipes recipes;
    private final Map<LocalDate, Integer> covers;
    private final Map<String, Ratio> mix;
    private final SalesPattern pattern;

    ServicePortions(Diary diary, Recipes recipes, LocalDate from, LocalDate to) {
        this.recipes = recipes;
        this.covers = diary.covers(from, to);
        this.mix = diary.mix();
        this.pattern = new SalesPattern(diary, from);
    }

    /** {@code covers} or {@code history}, whichever the day's portions come from. */
    String source(LocalDate day) {
        return fromCovers(day) ? "covers" : "history";
    }

    /** The main things made by the recipes served, in portions. */
    Map<String, Quantity> on(LocalDate day) {
        Map<String, Quantity> wanted = new TreeMap<>();
        portions(day)
                .forEach((id, portions) -> recipes.find(id)
                        .filter(recipe -> !recipe.makes().isEmpty() && portions.signum() > 0)
                        .map(ServicePortions::main)
                        .ifPresent(item -> wanted.merge(item, new Quantity(portions, Unit.PORTION), Quantity::plus)));
        return wanted;
    }

    private Map<String, Ratio> portions(LocalDate day) {
        if (!fromCovers(day)) {
            return pattern.on(day.getDayOfWeek());
        }
        Ratio guests = Ratio.of(covers.get(day));
        Map<String, Ratio> portions = new TreeMap<>();
        mix.forEach((recipe, perCover) -> portions.put(recipe, perCover.times(guests)));
        return portions;
    }

    private boolean fromCovers(LocalDate day) {
        return covers.containsKey(day) && (!mix.isEmpty() || covers.get(day) == 0);
    }

    private static String main(Recipe recipe) {
        return recipe.makes().get(0).item();
    }
}
