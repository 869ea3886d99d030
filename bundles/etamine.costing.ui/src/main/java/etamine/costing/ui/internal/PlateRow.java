package etamine.costing.ui.internal;

import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * One recipe in the list.
 *
 * @param id its id
 * @param name its name
 * @param cost the plate's cost where it is on the menu, else one portion's, else the batch's
 * @param each what that cost is for: plate, portion or batch
 * @param lower whether prices are missing, so that the cost is a lower bound
 * @param menu its figures on the menu; empty when it is not on it
 * @param most what most of its cost is, with its share
 */
record PlateRow(String id, String name, Money cost, String each, boolean lower, Optional<OnMenu> menu, String most) {

    /**
     * Figures of a plate that is sold.
     *
     * @param net price without tax
     * @param percent food cost in percent of it
     * @param contribution net price less cost
     * @param target the food cost it should not exceed
     */
    record OnMenu(Money net, Optional<BigDecimal> percent, Money contribution, Optional<BigDecimal> target) {
        boolean over() {
            return target.isPresent() && percent.isPresent() && percent.get().compareTo(target.get()) > 0;
        }
    }

    boolean onMenu() {
        return menu.isPresent();
    }

    String costText() {
        return (lower ? "at least " : "") + Figures.money(cost) + (each.equals("plate") ? "" : " a " + each);
    }

    String netText() {
        return menu.map(OnMenu::net).map(Figures::money).orElse("");
    }

    String percentText() {
        return menu.flatMap(OnMenu::percent).map(Figures::percent).orElse("");
    }

    String contributionText() {
        return menu.map(figures -> (lower ? "at most " : "") + Figures.money(figures.contribution()))
                .orElse("");
    }

    /** Whether its food cost is above what it should be, or it is sold below its cost. */
    boolean doubtful() {
        return menu.filter(figures -> figures.over() || figures.contribution().signum() < 0)
                .isPresent();
    }
}
