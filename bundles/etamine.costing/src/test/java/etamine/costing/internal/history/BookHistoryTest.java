package etamine.costing.internal.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import etamine.costing.DatedCost;
import etamine.costing.DatedPrice;
import etamine.costing.Moved;
import etamine.costing.Moved.Cause;
import etamine.costing.Moved.Kind;
import etamine.costing.Moved.PlateMove;
import etamine.costing.internal.larder.Larder;
import etamine.costing.internal.live.LiveCosts;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BookHistoryTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

    /** Cream at 4.00 a litre; 0.25 l in a litre of sauce, 80 ml of sauce and 100 g of peeled root on a plate. */
    private static Larder kitchen() {
        return new Larder()
                .bought("cream", "4.00", "1 l")
                .bought("root", "2.00", "1 kg")
                .prepared("root", "peeled", "0.8")
                .recipe("sauce")
                .uses("0.25 l", "cream")
                .makes("1 l", "sauce")
                .portion("80 ml")
                .done()
                .recipe("plate")
                .uses("1 portion", "sauce")
                .usesTrimmed("100 g", "root", "peeled")
                .makes("1 portion", "plate")
                .sold("10.00", "0", "0")
                .done()
                .remember();
    }

    private static PlateMove only(Larder larder) {
        List<PlateMove> plates = larder.history().since(DAY).plates();
        assertThat(plates).hasSize(1);
        return plates.get(0);
    }

    private static String effects(PlateMove move) {
        return String.join(
                " ",
                List.of(
                                move.effects().price(),
                                move.effects().yield(),
                                move.effects().portion(),
                                move.effects().recipe())
                        .stream()
                        .map(money -> money.amount().stripTrailingZeros().toPlainString())
                        .toList());
    }

    @Test
    void saysNothingWhereNothingChanged() {
        Moved moved = kitchen().history().since(DAY);
        assertThat(moved.prices()).isEmpty();
        assertThat(moved.plates()).isEmpty();
    }

    @Test
    void datesAPriceAndGivesItTheWholeChange() {
        Larder larder = kitchen().bought("cream", "4.56", "1 l");
        Moved moved = larder.history().since(DAY);
        assertThat(moved.prices()).hasSize(1);
        Moved.PriceMove price = moved.prices().get(0);
        assertThat(price.item()).isEqualTo("cream");
        assertThat(price.on()).isEqualTo(LocalDate.of(2026, 11, 22));
        assertThat(price.percent()).contains(new BigDecimal("14.00"));
        PlateMove plate = only(larder);
        // 80 ml of sauce hold 20 ml of cream: 0.08 to 0.0912
        assertThat(effects(plate)).isEqualTo("0.0112 0 0 0");
        assertThat(plate.causes()).extracting(Cause::subject).containsExactly("cream");
        assertThat(plate.causes().get(0).text()).isEqualTo("cream: 4.00 per 1 l to 4.56 per 1 l, +14.00 %");
        assertThat(plate.causes().get(0).amount().orElseThrow().amount()).isEqualByComparingTo("0.0112");
        assertThat(larder.history().since(LocalDate.of(2026, 11, 23)).plates()).isEmpty();
    }

    @Test
    void callsAnotherTrimAYieldAndABatchThatGivesLessToo() {
        Larder trimmed = kitchen();
        trimmed.prepared("root", "peeled", "0.5");
        // 0.1 kg at 2.00 over 0.8 is 0.25, over 0.5 it is 0.40
        assertThat(effects(only(trimmed))).isEqualTo("0 0.15 0 0");
        assertThat(only(trimmed).causes().get(0).text()).isEqualTo("root, peeled: yield 0.8 to 0.5");

        Larder boiled = kitchen();
        Recipe sauce = boiled.recipeList.find("sauce").orElseThrow();
        boiled.put(sauce.withMakes(List.of(sauce.makes().get(0).withQuantity(Quantity.parse("0.8 l")))));
        assertThat(effects(only(boiled))).isEqualTo("0 0.02 0 0");
    }

    @Test
    void callsALargerBatchNothing() {
        Larder larder = kitchen();
        Recipe sauce = larder.recipeList.find("sauce").orElseThrow();
        larder.put(sauce.withUses(List.of(sauce.uses().get(0).withQuantity(Quantity.parse("1 l"))))
                .withMakes(List.of(sauce.makes().get(0).withQuantity(Quantity.parse("4 l")))));
        assertThat(larder.history().since(DAY).plates()).isEmpty();
    }

    @Test
    void callsMoreOfTheSameOnAPlateAndALargerLadleAPortion() {
        Larder heaped = kitchen();
        Recipe plate = heaped.recipeList.find("plate").orElseThrow();
        heaped.put(plate.withUses(
                List.of(plate.uses().get(0), plate.uses().get(1).withQuantity(Quantity.parse("140 g")))));
        assertThat(effects(only(heaped))).isEqualTo("0 0 0.1 0");

        Larder ladled = kitchen();
        Recipe sauce = ladled.recipeList.find("sauce").orElseThrow();
        ladled.put(sauce.withPortion(Optional.of(Quantity.parse("120 ml"))));
        assertThat(effects(only(ladled))).isEqualTo("0 0 0.04 0");
        assertThat(only(ladled).causes()).extracting(Cause::kind).containsExactly(Kind.PORTION);
    }

    @Test
    void callsAnotherLineAndOtherAllowancesTheRecipe() {
        Larder larder = kitchen();
        Recipe plate = larder.recipeList.find("plate").orElseThrow();
        larder.put(plate.withUses(List.of(plate.uses().get(0)))
                .withMenu(plate.menu().map(menu -> menu.withPackaging(new BigDecimal("0.10")))));
        // The root, 0.25, is gone and 0.10 of packaging came.
        PlateMove move = only(larder);
        assertThat(effects(move)).isEqualTo("0 0 0 -0.15");
        assertThat(move.causes().get(0).text()).contains("without root, peeled").contains("packaging");
    }

    @Test
    void sharesWhatPriceAndYieldDoTogetherEvenly() {
        Larder larder = kitchen().bought("root", "3.00", "1 kg");
        larder.prepared("root", "peeled", "0.5");
        // 0.25 to 0.60. Price first 0.125, last 0.2; yield first 0.15, last 0.225.
        assertThat(effects(only(larder))).isEqualTo("0.1625 0.1875 0 0");
    }

    @Test
    void countsAPriceNobodyKnewThenAsTheFirstOneKnown() {
        Larder larder = new Larder()
                .unpriced("truffle", "kg")
                .recipe("plate")
                .uses("10 g", "truffle")
                .makes("1 portion", "plate")
                .sold("40.00", "0", "0")
                .done()
                .remember()
                .bought("truffle", "900", "1 kg");
        Moved moved = larder.history().since(DAY);
        assertThat(moved.plates()).isEmpty();
        assertThat(moved.prices()).isEmpty();
    }

    @Test
    void marksPlatesAboveTheirTarget() {
        Larder larder = kitchen().bought("root", "30.00", "1 kg").prepared("root", "peeled", "0.8");
        larder.settings.change(larder.settings.rules().withTarget(Optional.of(new BigDecimal("28"))));
        PlateMove move = only(larder);
        assertThat(move.foodCostPercent()).contains(new BigDecimal("38.30"));
        assertThat(move.overTarget()).isTrue();
    }

    @Test
    void followsAPriceAndAPlateThroughTheWeeks() {
        Larder larder = kitchen().bought("cream", "4.56", "1 l");
        assertThat(larder.history().prices("cream"))
                .extracting(DatedPrice::from, price -> price.price().amount().stripTrailingZeros())
                .containsExactly(
                        tuple(LocalDate.of(2026, 10, 23), new BigDecimal("4")),
                        tuple(LocalDate.of(2026, 11, 22), new BigDecimal("4.56")));
        List<DatedCost> course = larder.history().course("plate", 6);
        // Six weeks ago nothing had a price; five, four, three, two and one week ago the old one held.
        assertThat(course)
                .extracting(cost ->
                        cost.plate().cost().amount().stripTrailingZeros().toPlainString())
                .containsExactly("0.33", "0.33", "0.33", "0.33", "0.3412");
    }

    /** Whatever changes together, the four effects add up to the change to the last decimal, and so do the prices. */
    @ParameterizedTest
    @ValueSource(ints = {11, 12, 13})
    void addsUpToTheChangeOnGeneratedKitchens(int seed) {
        Random random = new Random(seed);
        int moves = 0;
        for (int round = 0; round < 60; round++) {
            Larder larder = generated(random);
            List<Money> before = costs(larder);
            larder.remember();
            change(larder, random);
            List<Money> after = costs(larder);
            for (PlateMove move : larder.history().since(DAY).plates()) {
                assertThat(move.effects().sum()).isEqualTo(move.change());
                int plate = Integer.parseInt(move.recipe().substring(1)) - 10;
                assertThat(move.before()).isEqualTo(before.get(plate));
                assertThat(move.now()).isEqualTo(after.get(plate));
                Money prices = move.causes().stream()
                        .filter(cause -> cause.kind() == Kind.PRICE)
                        .map(cause -> cause.amount().orElseThrow())
                        .reduce(Money.zero(move.now().currency()), Money::plus);
                assertThat(prices).isEqualTo(move.effects().price());
                moves++;
            }
        }
        assertThat(moves).isGreaterThan(50);
    }

    private static List<Money> costs(Larder larder) {
        LiveCosts costs = larder.costs();
        List<Money> plates = new ArrayList<>();
        for (int plate = 10; plate < 13; plate++) {
            plates.add(costs.recipe("p" + plate)
                    .orElseThrow()
                    .plate()
                    .orElseThrow()
                    .cost());
        }
        return plates;
    }

    private static Larder generated(Random random) {
        Larder larder = new Larder();
        for (int i = 0; i < 5; i++) {
            larder.bought("b" + i, (1 + random.nextInt(4_000)) / 100.0 + "", "1 kg");
            larder.prepared("b" + i, "trimmed", (40 + random.nextInt(60)) + "/100");
        }
        for (int r = 0; r < 3; r++) {
            Larder.Writing writing = larder.recipe("m" + r);
            lines(writing, random, r);
            writing.makes((200 + random.nextInt(800)) + " g", "m" + r)
                    .portion((20 + random.nextInt(100)) + " g")
                    .done();
        }
        for (int p = 10; p < 13; p++) {
            Larder.Writing writing = larder.recipe("p" + p).uses("1 portion", "m" + random.nextInt(3));
            lines(writing, random, 3);
            writing.makes((1 + random.nextInt(4)) + " portion", "p" + p)
                    .sold("20.00", "10", random.nextInt(5) + "")
                    .done();
        }
        return larder;
    }

    private static void lines(Larder.Writing writing, Random random, int made) {
        for (int line = 0; line < 1 + random.nextInt(3); line++) {
            writing.usesTrimmed((10 + random.nextInt(300)) + " g", "b" + random.nextInt(5), "trimmed");
        }
        if (made > 0) {
            writing.uses((10 + random.nextInt(90)) + " g", "m" + random.nextInt(made));
        }
    }

    private static void change(Larder larder, Random random) {
        if (random.nextBoolean()) {
            String item = "b" + random.nextInt(5);
            larder.bought(item, (1 + random.nextInt(4_000)) / 100.0 + "", "1 kg");
            larder.prepared(item, "trimmed", (40 + random.nextInt(60)) + "/100");
        }
        for (Recipe recipe : larder.recipeList.inOrder()) {
            switch (random.nextInt(6)) {
                case 0 ->
                    larder.put(recipe.withMakes(List.of(times(recipe.makes().get(0), random))));
                case 1 ->
                    larder.put(recipe.withUses(recipe.uses().stream()
                            .map(use -> use.withQuantity(use.quantity().times(factor(random))))
                            .toList()));
                case 2 -> larder.put(recipe.withUses(with(recipe.uses(), random)));
                case 3 -> larder.put(recipe.withPortion(recipe.portion().map(size -> size.times(factor(random)))));
                default -> {}
            }
        }
    }

    private static List<Use> with(List<Use> uses, Random random) {
        List<Use> more = new ArrayList<>(uses.subList(random.nextInt(uses.size()), uses.size()));
        more.add(new Use("b" + random.nextInt(5), Quantity.parse("25 g"), Optional.empty(), Basis.AP));
        return more;
    }

    private static Make times(Make make, Random random) {
        return make.withQuantity(make.quantity().times(factor(random)));
    }

    private static Ratio factor(Random random) {
        return Ratio.of(1 + random.nextInt(9), 1 + random.nextInt(9));
    }
}
