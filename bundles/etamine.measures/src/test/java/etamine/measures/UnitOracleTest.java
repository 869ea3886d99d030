package etamine.measures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/** A second opinion on sizes: the units of Indriya 2.2.4 with systems-common 2.2, written by others. */
class UnitOracleTest {
    /** In per cent, that is 1e-7 of the value: the oracle rounds the teaspoon and the tablespoon. */
    private static final double TOLERANCE = 1e-5;

    static Stream<Arguments> volumes() {
        return Stream.of(
                Arguments.of(Unit.L, Units.LITRE),
                Arguments.of(Unit.TSP, USCustomary.TEASPOON),
                Arguments.of(Unit.TBSP, USCustomary.TABLESPOON),
                Arguments.of(Unit.FLOZ, USCustomary.FLUID_OUNCE),
                Arguments.of(Unit.CUP, USCustomary.CUP),
                Arguments.of(Unit.PT, USCustomary.PINT),
                Arguments.of(Unit.GAL, USCustomary.GALLON_LIQUID),
                Arguments.of(Unit.FLOZ_IMP, Imperial.FLUID_OUNCE),
                Arguments.of(Unit.PT_IMP, Imperial.PINT),
                Arguments.of(Unit.QT_IMP, Imperial.QUART),
                Arguments.of(Unit.GAL_IMP, Imperial.GALLON_UK));
    }

    static Stream<Arguments> masses() {
        return Stream.of(
                Arguments.of(Unit.KG, Units.KILOGRAM),
                Arguments.of(Unit.G, Units.GRAM),
                Arguments.of(Unit.LB, USCustomary.POUND),
                Arguments.of(Unit.OZ, USCustomary.OUNCE),
                Arguments.of(Unit.LB, Imperial.POUND),
                Arguments.of(Unit.OZ, Imperial.OUNCE));
    }

    @ParameterizedTest
    @MethodSource("volumes")
    void agreesOnVolumes(Unit unit, javax.measure.Unit<Volume> oracle) {
        double litres = oracle.getConverterTo(Units.LITRE).convert(1.0);
        assertThat(Quantity.of(1, unit).in(Unit.L).amount().doubleValue()).isCloseTo(litres, withPercentage(TOLERANCE));
    }

    @ParameterizedTest
    @MethodSource("masses")
    void agreesOnMasses(Unit unit, javax.measure.Unit<Mass> oracle) {
        double kilograms = oracle.getConverterTo(Units.KILOGRAM).convert(1.0);
        assertThat(Quantity.of(1, unit).in(Unit.KG).amount().doubleValue())
                .isCloseTo(kilograms, withPercentage(TOLERANCE));
    }
}
