package etamine.costing;

import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Changes to try out together. A value: trying one thing more gives another experiment, and none of it is in the book.
 *
 * @param prices bought items and what their price becomes
 * @param yields preparations and what their yield becomes
 * @param gives recipes and how much of its main thing one batch gives
 * @param portions recipes and the size of one portion of the main thing
 * @param lines lines of recipes and the quantity they take
 * @param menuPrices recipes and what the guest pays, tax included
 */
public record Experiment(
        Map<String, PriceChange> prices,
        Map<Prepared, Ratio> yields,
        Map<String, Quantity> gives,
        Map<String, Quantity> portions,
        Map<Line, Quantity> lines,
        Map<String, BigDecimal> menuPrices) {

    /** Copies the maps, keeping their order. */
    public Experiment {
        prices = copy(prices);
        yields = copy(yields);
        gives = copy(gives);
        portions = copy(portions);
        lines = copy(lines);
        menuPrices = copy(menuPrices);
    }

    /**
     * A way of preparing an item.
     *
     * @param item the item
     * @param preparation the preparation's name
     */
    public record Prepared(String item, String preparation) {}

    /**
     * A line of a recipe.
     *
     * @param recipe the recipe
     * @param index the line's place among what it uses, from 0
     */
    public record Line(String recipe, int index) {}

    /** Nothing changed. */
    public static Experiment none() {
        return new Experiment(Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of());
    }

    /** Whether it changes nothing. */
    public boolean isEmpty() {
        return equals(none());
    }

    /** The same with another price of a bought item. */
    public Experiment withPrice(String item, PriceChange change) {
        return new Experiment(plus(prices, item, change), yields, gives, portions, lines, menuPrices);
    }

    /** The same with another yield of a preparation, more than zero. */
    public Experiment withYield(String item, String preparation, Ratio yield) {
        Map<Prepared, Ratio> more = plus(yields, new Prepared(item, preparation), yield);
        return new Experiment(prices, more, gives, portions, lines, menuPrices);
    }

    /** The same with a batch that gives another quantity of its main thing. */
    public Experiment withGives(String recipe, Quantity quantity) {
        return new Experiment(prices, yields, plus(gives, recipe, quantity), portions, lines, menuPrices);
    }

    /** The same with another size of one portion. */
    public Experiment withPortion(String recipe, Quantity size) {
        return new Experiment(prices, yields, gives, plus(portions, recipe, size), lines, menuPrices);
    }

    /** The same with another quantity on a line, counted from 0. */
    public Experiment withLine(String recipe, int index, Quantity quantity) {
        return new Experiment(
                prices, yields, gives, portions, plus(lines, new Line(recipe, index), quantity), menuPrices);
    }

    /** The same with another price on the menu. */
    public Experiment withMenuPrice(String recipe, BigDecimal price) {
        return new Experiment(prices, yields, gives, portions, lines, plus(menuPrices, recipe, price));
    }

    private static <K, V> Map<K, V> copy(Map<K, V> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    private static <K, V> Map<K, V> plus(Map<K, V> map, K key, V value) {
        Map<K, V> more = new LinkedHashMap<>(map);
        more.put(key, value);
        return more;
    }
}
