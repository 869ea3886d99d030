package etamine.recipes.internal.rule;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.MeasureStyle;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.MassBalance;
import etamine.recipes.internal.ItemView;
import etamine.recipes.internal.weight.BatchWeights;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What cannot be about the weights of a recipe. All of it may be meant, so all of it is only doubted. Used once. */
final class BalanceRules {
    /** Measures are rounded, so a little more out than in is no doubt: a fiftieth. */
    private static final Ratio SLACK = Ratio.of(51, 50);
    /** How far a reduction may be off its stated share, of that share: a tenth, since nobody stops a pot to the gram. */
    static final Ratio REDUCTION_SLACK = Ratio.of(1, 10);

    private final Recipe recipe;
    private final ItemView items;
    private final List<Finding> findings = new ArrayList<>();

    private BalanceRules(Recipe recipe, ItemView items) {
        this.recipe = recipe;
        this.items = items;
    }

    static List<Finding> of(Recipe recipe, ItemView items) {
        if (recipe.uses().isEmpty() || recipe.makes().isEmpty()) {
            return List.of();
        }
        BalanceRules rules = new BalanceRules(recipe, items);
        MassBalance balance = BatchWeights.of(recipe, items);
        rules.moreOutThanIn(balance);
        recipe.making().reducesTo().ifPresent(share -> rules.reduction(share, balance));
        rules.portion();
        return rules.findings;
    }

    /** With something unweighed in it may still balance; with something unweighed out it only gets worse. */
    private void moreOutThanIn(MassBalance balance) {
        boolean allIn = balance.inputs().stream().allMatch(input -> input.used().isPresent());
        if (allIn && balance.out().compareTo(balance.in().times(SLACK)) > 0) {
            doubt(
                    "mass-balance",
                    "/makes",
                    recipe.name() + " makes " + shown(balance.out()) + " out of " + shown(balance.in())
                            + "; check the amounts, or write down what was taken up: as a line, or as absorbed water.");
        }
    }

    private void reduction(Ratio stated, MassBalance balance) {
        Optional<Ratio> real = balance.complete() ? share(balance.out(), balance.in()) : volumes();
        if (real.isEmpty()) {
            doubt(
                    "reduction-unknown",
                    "/reducesTo",
                    "Whether " + recipe.name() + " comes down to " + percent(stated) + " cannot be checked. "
                            + String.join(" ", balance.unweighed()));
            return;
        }
        Ratio off = real.get().minus(stated).abs();
        if (off.compareTo(stated.times(REDUCTION_SLACK)) > 0) {
            doubt(
                    "reduction",
                    "/reducesTo",
                    recipe.name() + " should come down to " + percent(stated) + ", give or take a tenth of it, but its"
                            + " amounts come down to " + percent(real.get())
                            + "; check what goes in, what comes out, or the stated share.");
        }
    }

    private static Optional<Ratio> share(Quantity out, Quantity in) {
        return in.isZero() ? Optional.empty() : Optional.of(out.dividedBy(in));
    }

    /** Where something has no weight, volume tells as much: a reduction is mostly liquid. */
    private Optional<Ratio> volumes() {
        Quantity in = recipe.making()
                .absorbs()
                .map(water -> new Quantity(BatchWeights.water(water).amount(), Unit.ML))
                .orElse(Quantity.zero(Unit.ML));
        for (Use use : recipe.uses()) {
            Optional<Quantity> volume = items.find(use.item())
                    .flatMap(item -> use.as().isEmpty() ? volume(item, use.quantity()) : Optional.empty());
            if (volume.isEmpty()) {
                return Optional.empty();
            }
            in = in.plus(volume.get());
        }
        Quantity out = Quantity.zero(Unit.ML);
        for (Make make : recipe.makes()) {
            Optional<Quantity> volume = items.find(make.item()).flatMap(item -> volume(item, make.quantity()));
            if (volume.isEmpty()) {
                return Optional.empty();
            }
            out = out.plus(volume.get());
        }
        return share(out, in);
    }

    private static Optional<Quantity> volume(Item item, Quantity quantity) {
        return item.converter().convert(quantity, Dimension.VOLUME) instanceof Conversion.Converted found
                ? Optional.of(found.quantity())
                : Optional.empty();
    }

    private void portion() {
        Make main = recipe.makes().get(0);
        recipe.portion()
                .filter(portion -> portion.unit().isLike(main.quantity().unit()))
                .filter(portion -> portion.compareTo(main.quantity()) > 0)
                .ifPresent(portion -> doubt(
                        "portion-too-large",
                        "/portion",
                        "A portion of " + shown(portion) + " is more than the " + shown(main.quantity())
                                + " that a batch gives; check both."));
    }

    private void doubt(String code, String pointer, String text) {
        findings.add(new Finding(code, Finding.Grade.DOUBTFUL, pointer, text));
    }

    private static String percent(Ratio share) {
        return share.times(Ratio.of(100))
                        .toDecimal(1, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString()
                + " %";
    }

    private static String shown(Quantity quantity) {
        return QuantityText.format(quantity, MeasureStyle.METRIC);
    }
}
