package etamine.measures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Properties over seeded random quantities. */
class RoundTripTest {
    private static final long SEED = 2026_11_24;
    private static final List<Unit> UNITS = Stream.concat(
                    Unit.all().stream(),
                    Stream.of("bunch", "clove", "large sheet", "brin d'aneth").map(Unit::word))
            .toList();

    @Test
    void readsBackWhatItWrote() {
        for (Quantity quantity : quantities(20_000)) {
            assertThat(Quantity.parse(quantity.toString())).isEqualTo(quantity);
            assertThat(Quantity.parse(QuantityText.formatExact(quantity))).isEqualTo(quantity);
        }
    }

    @Test
    void readsBackPacks() {
        Random random = new Random(SEED);
        for (Quantity quantity : quantities(5_000)) {
            if (quantity.signum() > 0) {
                Pack pack = new Pack(Ratio.of(1 + random.nextInt(48)), quantity);
                assertThat(Pack.parse(pack.toString())).isEqualTo(pack);
                assertThat(Quantity.parse(pack.toString())).isEqualTo(pack.total());
            }
        }
    }

    /** What is shown can be typed again, is never nothing for something, and is off by an eighth teaspoon or an eighth. */
    @ParameterizedTest
    @EnumSource(MeasureStyle.class)
    void showsAmountsThatCanBeTypedAndAreNear(MeasureStyle style) {
        for (Quantity quantity : quantities(20_000)) {
            Quantity shown = Quantity.parse(QuantityText.format(quantity, style));
            assertThat(shown.signum()).isEqualTo(quantity.signum());
            Ratio fault = shown.minus(quantity)
                    .dividedBy(Quantity.of(1, quantity.unit()))
                    .abs();
            Ratio allowed = quantity.amount().abs().times(Ratio.of(1, 8)).max(slack(quantity.unit()));
            assertThat(fault).as("%s shown as %s", quantity, shown).isLessThanOrEqualTo(allowed);
        }
    }

    private static Ratio slack(Unit unit) {
        return unit.dimension() == Dimension.VOLUME
                ? Quantity.of("1/8", Unit.TSP).in(unit).amount()
                : Ratio.ZERO;
    }

    @Test
    void keepsBaseUnitsThroughTheLedger() {
        Random random = new Random(SEED);
        for (int round = 0; round < 5_000; round++) {
            Dimension dimension = Dimension.values()[random.nextInt(4)];
            long base = random.nextLong();
            assertThat(Quantity.fromBase(dimension, base).toBase()).isEqualTo(base);
        }
    }

    private static List<Quantity> quantities(int count) {
        Random random = new Random(SEED);
        List<Quantity> quantities = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            quantities.add(new Quantity(amount(random), UNITS.get(random.nextInt(UNITS.size()))));
        }
        return quantities;
    }

    private static Ratio amount(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> Ratio.of(random.nextInt(2_000) - 200);
            case 1 -> Ratio.of(random.nextInt(400), 1 + random.nextInt(16));
            case 2 -> Ratio.of(random.nextLong(), 1 + random.nextInt(1_000_000));
            default -> Ratio.of(random.nextInt(100_000), 1_000);
        };
    }
}
