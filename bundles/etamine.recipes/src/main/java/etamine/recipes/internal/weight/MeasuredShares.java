package etamine.recipes.internal.weight;

import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.BatchTest;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.yield.Spread;
import etamine.measures.Conversion;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.MassBalance;
import etamine.recipes.MeasuredYield;
import etamine.recipes.internal.ItemView;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What tests say of the share that each thing made has in what went in. */
public record MeasuredShares(Recipe recipe, ItemView items) {

    /** One for each thing made, over the given tests. */
    public List<MeasuredYield> over(List<BatchTest> tests) {
        MassBalance balance = BatchWeights.of(recipe, items);
        Optional<Quantity> in = in(balance);
        List<MeasuredYield> yields = new ArrayList<>();
        for (int i = 0; i < recipe.makes().size(); i++) {
            Make make = recipe.makes().get(i);
            Optional<Ratio> written = balance.outputs().get(i).weight().flatMap(out -> in.map(out::dividedBy));
            Optional<Spread> measured = Spread.of(shares(make.item(), tests));
            Optional<Quantity> working = measured.flatMap(spread -> in.flatMap(whole -> working(make, whole, spread)));
            yields.add(new MeasuredYield(make.item(), items.name(make.item()), written, measured, working));
        }
        return List.copyOf(yields);
    }

    /** What goes into a batch, when all of it can be weighed. */
    private static Optional<Quantity> in(MassBalance balance) {
        boolean weighed =
                balance.inputs().stream().allMatch(input -> input.used().isPresent());
        return weighed && balance.in().signum() > 0 ? Optional.of(balance.in()) : Optional.empty();
    }

    private List<Ratio> shares(String item, List<BatchTest> tests) {
        List<Ratio> shares = new ArrayList<>();
        for (BatchTest test : tests) {
            if (test.in().unit().dimension() != Dimension.MASS || test.in().signum() <= 0) {
                continue;
            }
            test.out().stream()
                    .filter(weighed -> weighed.item().equals(item))
                    .flatMap(weighed -> weight(weighed, items).stream())
                    .reduce(Quantity::plus)
                    .ifPresent(weight -> shares.add(weight.dividedBy(test.in())));
        }
        return shares;
    }

    private Optional<Quantity> working(Make make, Quantity whole, Spread spread) {
        Ratio grams = whole.in(Unit.G).amount().times(spread.mean());
        Quantity weight = new Quantity(Ratio.of(grams.toDecimal(1, RoundingMode.HALF_UP)), Unit.G);
        Unit own = make.quantity().unit();
        return items.find(make.item())
                .map(item -> item.converter().convert(weight, own))
                .filter(Conversion.Converted.class::isInstance)
                .map(Conversion::orThrow)
                .or(() -> own.dimension() == Dimension.MASS ? Optional.of(weight.in(own)) : Optional.empty());
    }

    public static Optional<Quantity> weight(BatchTest.Weighed weighed, ItemView items) {
        if (weighed.quantity().unit().dimension() == Dimension.MASS) {
            return Optional.of(weighed.quantity().in(Unit.G));
        }
        return items.find(weighed.item()).flatMap((Item item) -> BatchWeights.weight(item, weighed.quantity()));
    }
}
