package etamine.costing.internal.butcher;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.costing.ButcherSheet;
import etamine.costing.ButcherSheet.Part;
import etamine.costing.ButcherSheet.Portion;
import etamine.costing.ButcherSheet.Usable;
import etamine.costing.internal.words.Amounts;
import etamine.costing.internal.words.CostJson;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Works one sheet out: factors are quotients of exact amounts, rounded once. Used once.
 *
 * <p>Cost factor per kg = cost per usable kg / dealer's price; per portion = portion cost / dealer's price; new portion
 * cost = factor per kg x portion in kg x new price (P. R. Dittmer and J. D. Keefe, ch. 6).
 */
final class WeighedSheet {
    private static final int PLACES = 10;
    private static final Explanation UNTOLD = Explanation.of("Butcher's test", "", List.of());

    private final WeighedTests tests;
    private final Recipe recipe;
    private final RecipeCost cost;
    private final Quantity purchased;
    private final Optional<Ratio> dealer;
    private final List<String> notes = new ArrayList<>();

    WeighedSheet(WeighedTests tests, Recipe recipe, RecipeCost cost, Quantity purchased) {
        this.tests = tests;
        this.recipe = recipe;
        this.cost = cost;
        this.purchased = purchased;
        this.dealer = cost.lines().get(0).cost().map(paid -> paid.toRatio().dividedBy(purchased.amount()));
    }

    static UnitPrice perKg(BigDecimal amount, Quantity weight) {
        return price(Ratio.of(amount).dividedBy(weight.in(Unit.KG).amount()));
    }

    private static UnitPrice price(Ratio perKg) {
        BigDecimal amount = perKg.toDecimal(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
        return new UnitPrice(amount.setScale(Math.max(2, amount.scale())), Quantity.of(1, Unit.KG));
    }

    ButcherSheet of(Optional<UnitPrice> asked, Optional<Quantity> portion) {
        List<Part> parts = new ArrayList<>();
        Quantity loss = purchased;
        for (Make make : recipe.makes()) {
            Optional<Quantity> weight = tests.weight(make.item(), make.quantity());
            if (weight.isEmpty()) {
                notes.add("Nothing says what " + make.quantity() + " of "
                        + tests.items().name(make.item()) + " weighs, so it is not on the sheet.");
                continue;
            }
            loss = loss.minus(weight.get());
            parts.add(part(make, weight.get(), asked, portion));
        }
        if (parts.isEmpty()) {
            throw new IllegalArgumentException(
                    recipe.name() + " makes nothing by weight, so there is no test to show.");
        }
        look(loss, parts);
        ButcherSheet sheet = new ButcherSheet(
                recipe.id(),
                recipe.name(),
                recipe.uses().get(0).item(),
                tests.items().name(recipe.uses().get(0).item()),
                purchased,
                dealer.map(WeighedSheet::price),
                cost.batch(),
                parts,
                loss,
                asked,
                notes,
                UNTOLD);
        return told(sheet);
    }

    private Part part(Make make, Quantity weight, Optional<UnitPrice> asked, Optional<Quantity> portion) {
        RecipeCost.Made made = cost.makes().stream()
                .filter(one -> one.item().equals(make.item()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "What " + tests.items().name(make.item()) + " costs is not known; look at the recipe."));
        Ratio perKg = perKg(made);
        Optional<UnitPrice> valued = make.credit()
                .or(make::marketValue)
                .flatMap(price -> tests.weight(make.item(), price.per()).map(per -> perKg(price.amount(), per)));
        Optional<Usable> usable =
                make.credit().isPresent() ? Optional.empty() : Optional.of(usable(make, weight, perKg, asked, portion));
        return new Part(
                make.item(),
                tests.items().name(make.item()),
                weight,
                Amounts.percent(weight.amount(), purchased.amount()).orElseThrow(),
                valued,
                money(perKg.times(weight.amount())),
                usable);
    }

    private Ratio perKg(RecipeCost.Made made) {
        Quantity per = tests.weight(made.item(), made.unitCost().per()).orElseThrow();
        return Ratio.of(made.unitCost().amount()).dividedBy(per.amount());
    }

    private Usable usable(
            Make make, Quantity weight, Ratio perKg, Optional<UnitPrice> asked, Optional<Quantity> portion) {
        Optional<Ratio> factor = dealer.filter(price -> !price.isZero()).map(perKg::dividedBy);
        Optional<Ratio> askedPerKg = asked.flatMap(price -> factor.map(each -> each.times(Ratio.of(price.amount()))));
        boolean main = recipe.makes().get(0) == make;
        Optional<Quantity> size =
                portion.or(() -> recipe.portion().filter(own -> main).flatMap(own -> tests.weight(make.item(), own)));
        return new Usable(
                money(perKg),
                factor.map(WeighedSheet::decimal),
                askedPerKg.map(this::money),
                size.filter(one -> one.signum() > 0)
                        .map(one -> portion(one.in(Unit.KG), weight, perKg, factor, askedPerKg)));
    }

    private Portion portion(
            Quantity size, Quantity weight, Ratio perKg, Optional<Ratio> factor, Optional<Ratio> askedPerKg) {
        Ratio kg = size.amount();
        return new Portion(
                size,
                weight.dividedBy(size).floor(),
                money(perKg.times(kg)),
                factor.map(each -> decimal(each.times(kg))),
                askedPerKg.map(each -> money(each.times(kg))));
    }

    private void look(Quantity loss, List<Part> parts) {
        if (loss.signum() < 0) {
            notes.add("More comes out than went in; look at the weights.");
        }
        if (dealer.isEmpty()) {
            notes.add("No price is known for "
                    + tests.items().name(recipe.uses().get(0).item()) + ", so there are no factors.");
        } else if (dealer.filter(Ratio::isZero).isPresent()) {
            notes.add("The dealer's price is zero, so there are no factors.");
        }
        if (recipe.uses().size() > 1) {
            notes.add("What else goes in is in the cost, but not in the weight as purchased.");
        }
        if (parts.stream().anyMatch(part -> part.usable().isEmpty())) {
            notes.add("A factor holds for another price only as far as the credits move with it.");
        }
        if (parts.stream()
                .flatMap(part -> part.usable().stream())
                .anyMatch(part -> part.perKg().signum() < 0)) {
            notes.add("The credits are more than the whole costs, so what is usable costs less than nothing.");
        }
        cost.warnings().forEach(warning -> notes.add(warning.text()));
    }

    private Money money(Ratio amount) {
        return Money.of(amount, cost.batch().currency());
    }

    private static BigDecimal decimal(Ratio factor) {
        return factor.toDecimal(PLACES, RoundingMode.HALF_UP);
    }

    private ButcherSheet told(ButcherSheet sheet) {
        List<Explanation> lines = new ArrayList<>();
        lines.add(Explanation.leaf(
                sheet.boughtName() + ", as purchased",
                Amounts.text(sheet.cost()),
                text(purchased)
                        + sheet.dealer()
                                .map(price -> " at " + CostJson.text(price))
                                .orElse("")));
        sheet.parts().forEach(part -> lines.add(told(part)));
        lines.add(Explanation.leaf("Lost", text(sheet.loss()), "what is left of the weight"));
        Explanation whole = Explanation.of("Butcher's test: " + sheet.name(), Amounts.text(sheet.cost()), lines)
                .about(new Subject("recipe", sheet.recipe()));
        return new ButcherSheet(
                sheet.recipe(),
                sheet.name(),
                sheet.bought(),
                sheet.boughtName(),
                sheet.purchased(),
                sheet.dealer(),
                sheet.cost(),
                sheet.parts(),
                sheet.loss(),
                sheet.asked(),
                sheet.notes(),
                whole);
    }

    private Explanation told(Part part) {
        String source = text(part.weight()) + ", " + part.percent() + " %"
                + (part.usable().isPresent() ? ", bears its share of the cost" : ", credited");
        List<Explanation> below = new ArrayList<>();
        part.usable().ifPresent(usable -> {
            below.add(Explanation.leaf("A usable kg", Amounts.text(usable.perKg()), "its share over its weight"));
            usable.factor()
                    .ifPresent(factor -> below.add(Explanation.leaf(
                            "Cost factor per kg", plain(factor), "a usable kg over the dealer's price")));
            usable.portion()
                    .ifPresent(one -> below.add(Explanation.leaf(
                            "A portion of " + text(one.size()),
                            Amounts.text(one.cost()),
                            one.factor()
                                    .map(factor -> "factor " + plain(factor))
                                    .orElse(""))));
        });
        return new Explanation(part.name(), Amounts.text(part.value()), source, below, Optional.empty());
    }

    private static String plain(BigDecimal factor) {
        return factor.setScale(4, RoundingMode.HALF_UP).toPlainString();
    }

    private String text(Quantity quantity) {
        return QuantityText.format(quantity, tests.kitchen().house().measures());
    }
}
