package etamine.costing.internal.history;

import etamine.costing.Moved.Kind;
import etamine.costing.internal.engine.PortionSize;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What bears on the cost between two versions of a recipe, in words, sorted as {@link RecipeMix} sorts it. */
final class RecipeDifference {
    private final Recipe before;
    private final Recipe after;
    private final Map<String, Item> items;
    private final boolean portions;
    private final Map<Kind, List<String>> told = new EnumMap<>(Kind.class);

    RecipeDifference(Recipe before, Recipe after, Map<String, Item> items) {
        this.before = before;
        this.after = after;
        this.items = items;
        this.portions = PortionSize.makesPortions(before) && PortionSize.makesPortions(after);
        if (!before.portion().equals(after.portion())) {
            say(Kind.PORTION, "portion " + words(before.portion()) + " to " + words(after.portion()));
        }
        lines();
        makes();
        if (allowances(before.menu()) != allowances(after.menu())) {
            say(Kind.RECIPE, "other Q factor or packaging");
        }
    }

    /** What changed, by kind. */
    Map<Kind, List<String>> told() {
        return told;
    }

    private void lines() {
        Ratio size = portions ? Ratio.ONE : RecipeMix.size(before, after);
        for (int i = 0; i < after.uses().size(); i++) {
            Use now = after.uses().get(i);
            Optional<Use> was = RecipeMix.match(after, i, before);
            if (was.isEmpty()) {
                say(Kind.RECIPE, "now with " + now.quantity() + " " + name(now));
            } else if (!was.get().quantity().times(size).equals(now.quantity())) {
                Kind kind = portions ? Kind.PORTION : Kind.RECIPE;
                say(kind, name(now) + " " + was.get().quantity() + " to " + now.quantity());
            }
        }
        for (int i = 0; i < before.uses().size(); i++) {
            if (RecipeMix.match(before, i, after).isEmpty()) {
                say(Kind.RECIPE, "without " + name(before.uses().get(i)));
            }
        }
    }

    private void makes() {
        Ratio size = portions ? Ratio.ONE : RecipeMix.size(before, after);
        Kind kind = portions ? Kind.PORTION : Kind.YIELD;
        for (Make now : after.makes()) {
            Optional<Make> was = before.makes().stream()
                    .filter(make -> make.item().equals(now.item()))
                    .findFirst();
            was.filter(make -> !same(make.quantity().times(size), now.quantity()))
                    .ifPresent(make -> say(
                            kind,
                            "a batch gives " + make.quantity() + " to " + now.quantity()
                                    + (size.equals(Ratio.ONE) ? "" : ", beyond its size")));
            if (was.isEmpty()
                    || !was.get().credit().equals(now.credit())
                    || !was.get().marketValue().equals(now.marketValue())) {
                say(Kind.RECIPE, "other credits or market values");
            }
        }
    }

    private static boolean same(Quantity one, Quantity two) {
        return one.unit().isLike(two.unit()) && one.compareTo(two) == 0;
    }

    private static int allowances(Optional<MenuPrice> menu) {
        return menu.map(found -> List.of(
                                plain(found.qFactorPercent()), plain(found.qFactorAmount()), plain(found.packaging()))
                        .hashCode())
                .orElse(0);
    }

    private static BigDecimal plain(BigDecimal amount) {
        return amount.stripTrailingZeros();
    }

    private void say(Kind kind, String text) {
        List<String> texts = told.computeIfAbsent(kind, key -> new ArrayList<>());
        if (texts.isEmpty()) {
            texts.add(after.name() + ": " + text);
        } else if (!texts.contains(text)) {
            texts.add(text);
        }
    }

    private String name(Use use) {
        Item item = items.get(use.item());
        return (item == null ? use.item() : item.name())
                + use.as().map(as -> ", " + as).orElse("");
    }

    private static String words(Optional<Quantity> quantity) {
        return quantity.map(Quantity::toString).orElse("not said");
    }
}
