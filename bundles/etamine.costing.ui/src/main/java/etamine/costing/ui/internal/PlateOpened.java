package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.base.Problem;
import etamine.kitchen.cost.PlateCost;
import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.recipe.Kind;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.widgets.StackBlocks;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** One recipe's figures as sentences, rows and blocks. */
final class PlateOpened {
    private final CostingParts parts;
    private final Figures figures;
    private final RecipeCost cost;
    private final String name;

    PlateOpened(CostingParts parts, RecipeCost cost) {
        this.parts = parts;
        this.figures = parts.figures();
        this.cost = cost;
        this.name = parts.recipeName(cost.recipe());
    }

    PlateDetail detail(List<PlateRow> all) {
        List<RecipeCost.Line> dearestFirst = cost.lines().stream()
                .sorted(Comparator.comparing((RecipeCost.Line line) ->
                                line.cost().map(Money::amount).orElse(BigDecimal.ZERO))
                        .reversed())
                .toList();
        List<PlateDetail.Line> lines = new ArrayList<>();
        List<StackBlocks.Block> blocks = new ArrayList<>();
        for (RecipeCost.Line line : dearestFirst) {
            lines.add(line(line, lines.size() + 1));
            blocks.add(new StackBlocks.Block(
                    parts.items().name(line.item()),
                    line.cost().map(money -> money.amount().doubleValue()).orElse(0.0),
                    line.cost().map(Figures::money).orElse("missing")));
        }
        for (Added added : added()) {
            lines.add(new PlateDetail.Line(
                    lines.size() + 1,
                    "",
                    added.name(),
                    "",
                    "",
                    "",
                    Figures.money(added.money()),
                    share(added.money()),
                    added.what()));
            blocks.add(new StackBlocks.Block(
                    added.name(), added.money().amount().doubleValue(), Figures.money(added.money())));
        }
        List<String> doubts = cost.warnings().stream().map(Problem::text).toList();
        Explanation story = parts.costs().explain(cost.recipe()).orElseGet(() -> Explanation.leaf(name, "", "removed"));
        return new PlateDetail(title(), why(all), doubts, blocks, lines, pairs(), story);
    }

    private String title() {
        String least = cost.complete() ? "" : "at least ";
        String batch = least + figures.full(cost.batch());
        return cost.plate()
                .map(plate -> name + ": " + least + figures.full(plate.cost())
                        + (isOnePortion() ? "" : "; one batch " + batch))
                .orElseGet(() -> name + ": one batch " + batch
                        + cost.portion()
                                .map(portion -> ", one portion " + least + figures.full(portion))
                                .orElse(""));
    }

    private boolean isOnePortion() {
        return cost.portion().filter(cost.batch()::equals).isPresent();
    }

    /** Where it stands among all plates by what it leaves, and why. */
    private String why(List<PlateRow> all) {
        if (cost.plate().isEmpty()) {
            return "";
        }
        PlateCost plate = cost.plate().get();
        List<PlateRow> sold = all.stream()
                .filter(PlateRow::onMenu)
                .sorted(Comparator.comparing(row -> row.menu().orElseThrow().contribution()))
                .toList();
        int place = sold.stream().map(PlateRow::id).toList().indexOf(cost.recipe()) + 1;
        String earns = "Leaves " + figures.full(plate.contribution()) + " a cover: " + Figures.money(plate.net())
                + " net less " + Figures.money(plate.cost()) + " cost.";
        String rank = place < 1 ? "" : " " + ordinal(place) + " of " + sold.size() + ".";
        String most = all.stream()
                .filter(row -> row.id().equals(cost.recipe()) && !row.most().isEmpty())
                .findFirst()
                .map(row -> " Most of its cost: " + row.most() + ".")
                .orElse("");
        return earns + rank + most + percent(plate) + prime(plate);
    }

    private String percent(PlateCost plate) {
        boolean drink = parts.recipe(cost.recipe())
                .filter(recipe -> recipe.kind() == Kind.DRINK)
                .isPresent();
        Optional<BigDecimal> target = plate.target();
        return plate.foodCostPercent()
                .map(percent -> (drink ? " Pour cost " : " Food cost ") + Figures.percent(percent)
                        + target.map(most -> percent.compareTo(most) > 0
                                        ? ", over its target of " + Figures.percentAsWritten(most)
                                        : ", within its target of " + Figures.percentAsWritten(most))
                                .orElse("")
                        + ".")
                .orElse("");
    }

    /** Cost and work together, where the kitchen costs work. */
    private String prime(PlateCost plate) {
        return plate.labour()
                .flatMap(labour -> plate.prime()
                        .map(prime -> " Hands-on work " + Figures.money(labour) + ", prime cost "
                                + figures.full(prime)
                                + (plate.net().signum() > 0
                                        ? ", " + PlatesModel.share(prime, plate.net()) + " of net"
                                        : "")
                                + "."))
                .orElse("");
    }

    private static String ordinal(int place) {
        String least = "least";
        return switch (place) {
            case 1 -> "The " + least;
            case 2 -> "The second " + least;
            case 3 -> "The third " + least;
            default -> "Place " + place + " from the " + least;
        };
    }

    private PlateDetail.Line line(RecipeCost.Line line, int number) {
        return new PlateDetail.Line(
                number,
                line.item(),
                parts.items().name(line.item()) + line.as().map(as -> ", " + as).orElse(""),
                figures.quantity(line.quantity()),
                line.asPurchased()
                        .map(bought -> bought(line.quantity(), bought))
                        .orElse("cannot be converted"),
                line.unitPrice().map(Figures::price).orElse("none"),
                line.cost().map(Figures::money).orElse("missing"),
                line.cost().map(this::share).orElse(""),
                source(line));
    }

    /** Where a price comes from, since when, and how old it is. */
    private String source(RecipeCost.Line line) {
        return line.origin().map(figures::origin).orElse(line.source());
    }

    private String bought(Quantity written, Quantity bought) {
        return written.equals(bought) ? "" : figures.quantity(bought);
    }

    private String share(Money part) {
        return PlatesModel.share(part, PlatesModel.whole(cost));
    }

    /** What is added to the cost of one portion, each with what it is for. */
    private record Added(String name, Money money, String what) {}

    private List<Added> added() {
        List<Added> added = new ArrayList<>();
        cost.plate().ifPresent(plate -> {
            add(added, "Q factor, percentage", plate.parts().qFactorShare(), "for ingredients too small to measure");
            add(added, "Q factor, amount", plate.parts().qFactorAmount(), "for what accompanies every plate");
            add(added, "Packaging and garnish", plate.parts().packaging(), "allowance for each portion");
        });
        return added;
    }

    private static void add(List<Added> added, String name, Money money, String what) {
        if (!money.isZero()) {
            added.add(new Added(name, money, what));
        }
    }

    private List<PlateDetail.Pair> pairs() {
        return cost.drinks().stream().map(this::pair).toList();
    }

    private PlateDetail.Pair pair(RecipeCost.WithDrink drink) {
        PlateCost pour = drink.poured();
        return new PlateDetail.Pair(
                drink.drink(),
                parts.recipeName(drink.drink()),
                drink.level(),
                (drink.complete() ? "" : "at least ") + Figures.money(pour.cost()),
                pour.foodCostPercent().map(Figures::percent).orElse(Figures.NONE),
                Figures.money(pour.net()),
                drink.costPercent().map(Figures::percent).orElse(Figures.NONE),
                Figures.money(drink.contribution()));
    }
}
