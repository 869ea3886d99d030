package etamine.costing.internal.price;

import etamine.costing.PriceRounding;
import etamine.costing.PriceRounding.Way;
import etamine.measures.Money;
import etamine.measures.Ratio;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Brings a price to what can stand on a menu. */
final class MenuRounding {
    private static final int PLACES = 8;

    private final PriceRounding rule;
    private final Currency currency;

    MenuRounding(PriceRounding rule, Currency currency) {
        this.rule = rule;
        this.currency = currency;
    }

    /** The price by the rule; never below zero. */
    Money of(Ratio price) {
        BigDecimal exact = price.toDecimal(PLACES, RoundingMode.HALF_UP);
        return new Money(rule.endings().isEmpty() ? toCoin(exact) : toEnding(exact), currency);
    }

    private BigDecimal toCoin(BigDecimal price) {
        RoundingMode mode = switch (rule.way()) {
            case UP -> RoundingMode.CEILING;
            case NEAREST -> RoundingMode.HALF_UP;
            case DOWN -> RoundingMode.FLOOR;
        };
        return price.setScale(Math.max(0, currency.getDefaultFractionDigits()), mode);
    }

    private BigDecimal toEnding(BigDecimal price) {
        TreeSet<BigDecimal> near = near(price);
        BigDecimal above = near.ceiling(price);
        BigDecimal below = near.floor(price);
        if (below == null || rule.way() == Way.UP) {
            return above;
        }
        if (rule.way() == Way.DOWN) {
            return below;
        }
        return above.subtract(price).compareTo(price.subtract(below)) <= 0 ? above : below;
    }

    /** Every possible price from a unit below to two units above. */
    private TreeSet<BigDecimal> near(BigDecimal price) {
        BigDecimal whole = price.setScale(0, RoundingMode.FLOOR).subtract(BigDecimal.ONE);
        TreeSet<BigDecimal> near = new TreeSet<>();
        for (int step = 0; step <= 3; step++) {
            for (BigDecimal ending : rule.endings()) {
                BigDecimal possible = whole.add(BigDecimal.valueOf(step)).add(ending);
                if (possible.signum() >= 0) {
                    near.add(possible);
                }
            }
        }
        return near;
    }

    /** The rule in words. */
    String words() {
        String way = switch (rule.way()) {
            case UP -> "up to the next";
            case NEAREST -> "to the nearest";
            case DOWN -> "down to the next";
        };
        List<BigDecimal> endings = rule.endings();
        return endings.isEmpty()
                ? way + " smallest coin"
                : way + " "
                        + endings.stream()
                                .map(ending -> ending.setScale(
                                                Math.max(ending.scale(), currency.getDefaultFractionDigits()))
                                        .toPlainString()
                                        .substring(1))
                                .collect(Collectors.joining(" or "));
    }
}
