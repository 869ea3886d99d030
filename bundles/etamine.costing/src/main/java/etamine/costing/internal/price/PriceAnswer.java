package etamine.costing.internal.price;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.costing.PriceAdvice;
import etamine.costing.PriceQuestion;
import etamine.costing.PriceTarget;
import etamine.costing.internal.words.Amounts;
import etamine.measures.Money;
import etamine.measures.Ratio;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The figures of a price, exact.
 *
 * @param question what was asked
 * @param net what meets the target, without tax
 * @param gross the same with tax
 * @param menu what stands on the menu
 * @param left what is left of that without tax
 */
record PriceAnswer(PriceQuestion question, Ratio net, Ratio gross, Money menu, Ratio left) {

    Optional<BigDecimal> foodCost() {
        return Amounts.percent(question.cost().toRatio(), left);
    }

    Ratio contribution() {
        return left.minus(question.cost().toRatio());
    }

    PriceAdvice advice(boolean lowerBound, List<String> notes, MenuRounding rounding) {
        return new PriceAdvice(
                question,
                money(net),
                money(gross),
                menu,
                money(left),
                foodCost(),
                question.labour()
                        .flatMap(work ->
                                Amounts.percent(question.cost().plus(work).toRatio(), left)),
                money(contribution()),
                lowerBound,
                notes,
                explained(rounding));
    }

    private Money money(Ratio amount) {
        return Money.of(amount, question.cost().currency());
    }

    private Explanation explained(MenuRounding rounding) {
        List<Explanation> parts = new ArrayList<>();
        String tax = question.taxPercent().stripTrailingZeros().toPlainString() + " % tax";
        String source = question.recipe().isPresent() ? "cost of one portion now" : "as given";
        Explanation cost = Explanation.leaf("Cost", Amounts.text(question.cost()), source);
        parts.add(question.recipe()
                .map(id -> cost.about(new Subject("recipe", id)))
                .orElse(cost));
        question.labour().ifPresent(work -> parts.add(Explanation.leaf("Hands-on work", Amounts.text(work), "")));
        parts.add(Explanation.leaf("Price without tax", Amounts.text(money(net)), working()));
        parts.add(Explanation.leaf("Price with tax", Amounts.text(money(gross)), "with " + tax));
        parts.add(Explanation.leaf("On the menu", Amounts.text(menu), rounding.words()));
        parts.add(Explanation.leaf(
                "Left of it without tax",
                Amounts.text(money(left)),
                question.taxIncluded() ? "less " + tax : "the menu's prices are without tax"));
        foodCost()
                .ifPresent(percent -> parts.add(Explanation.leaf(
                        "Food cost",
                        percent + " %",
                        "cost over the price without tax, rounded half up to two decimals")));
        parts.add(Explanation.leaf(
                "Contribution", Amounts.text(money(contribution())), "the price without tax less cost"));
        return Explanation.of("Price", Amounts.text(menu), parts);
    }

    private String working() {
        PriceTarget target = question.target();
        if (target instanceof PriceTarget.FoodCost share) {
            return "cost / " + plain(share.percent()) + " %";
        }
        if (target instanceof PriceTarget.Contribution amount) {
            return "cost + " + plain(amount.amount());
        }
        if (target instanceof PriceTarget.Factor multiple) {
            return "cost x " + plain(multiple.factor());
        }
        return "(cost + work) / " + plain(((PriceTarget.PrimeCost) target).percent()) + " %";
    }

    private static String plain(BigDecimal number) {
        return number.toPlainString();
    }
}
