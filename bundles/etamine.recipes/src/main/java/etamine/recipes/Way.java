package etamine.recipes;

import java.util.List;
import java.util.stream.Collectors;

/**
 * The way from a recipe down to the ingredient that something comes from.
 *
 * @param stops what is passed, from the recipe to the ingredient
 */
public record Way(List<Stop> stops) {

    /**
     * One thing on the way.
     *
     * @param item its identifier; of the first stop, the recipe's
     * @param name what it is called
     * @param instead whether it is only named as a substitute
     */
    public record Stop(String item, String name, boolean instead) {}

    /** Copies the list. */
    public Way {
        stops = List.copyOf(stops);
    }

    /** The ingredient at its end. */
    public Stop source() {
        return stops.get(stops.size() - 1);
    }

    /** The whole way: {@code Plate of hake → Mussel cream → Fish stock → Celery}. */
    public String inWords() {
        return words(stops);
    }

    /** The way without where it begins, for where that is plain: {@code Mussel cream → Fish stock → Celery}. */
    public String below() {
        return words(stops.size() > 1 ? stops.subList(1, stops.size()) : stops);
    }

    private static String words(List<Stop> stops) {
        return stops.stream()
                .map(stop -> stop.instead() ? "or " + stop.name() : stop.name())
                .collect(Collectors.joining(" → "));
    }
}
