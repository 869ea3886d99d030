package etamine.costing.internal.live;

import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.measures.Money;
import java.util.ArrayList;
import java.util.List;

/** What a plate's cost consists of, as lines of text. */
final class PlateLines {
    private PlateLines() {}

    /** Only what is there: allowances, work and the target. */
    static List<String> of(PlateCost plate) {
        List<String> lines = new ArrayList<>();
        add(
                lines,
                "Q factor, share for what is too small to measure: ",
                plate.parts().qFactorShare());
        add(
                lines,
                "Q factor, amount for what accompanies every plate: ",
                plate.parts().qFactorAmount());
        add(lines, "packaging and garnish: ", plate.parts().packaging());
        plate.labour().ifPresent(work -> lines.add("hands-on work: " + work.rounded()));
        plate.prime().ifPresent(prime -> lines.add("prime cost: " + prime.rounded()));
        plate.target()
                .ifPresent(target -> lines.add("target food cost: " + target.toPlainString() + " %"
                        + (plate.overTarget() ? ", which it is above" : "")));
        return lines;
    }

    private static void add(List<String> lines, String what, Money amount) {
        if (!amount.isZero()) {
            lines.add(what + amount.rounded());
        }
    }

    /** The plate with a drink in one line. */
    static String of(RecipeCost.WithDrink drink, String name) {
        return "with " + name
                + (drink.level().isEmpty() ? "" : " (" + drink.level() + ")")
                + ": pour " + drink.poured().cost().rounded()
                + drink.poured()
                        .foodCostPercent()
                        .map(percent -> ", pour cost " + percent + " %")
                        .orElse("")
                + "; together " + (drink.complete() ? "" : "at least ")
                + drink.cost().rounded()
                + ", net price " + drink.net().rounded()
                + ", contribution " + drink.contribution().rounded();
    }
}
