package etamine.recipes.internal.scale;

import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.Filled;
import etamine.recipes.Vessel;
import etamine.recipes.Vessels;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Component;

/**
 * Vessels by their sizes. Gastronorm sizes are the outer ones of EN 631-1 in millimetres (recalled from the standard's
 * tables); their volume is the box of that size, so it is an upper bound.
 */
@Component
public final class VesselSizes implements Vessels {
    private static final int LONGEST = 300;
    private static final List<Gastronorm> GASTRONORM = List.of(
            new Gastronorm("2/1", 650, 530),
            new Gastronorm("1/1", 530, 325),
            new Gastronorm("2/3", 354, 325),
            new Gastronorm("1/2", 325, 265),
            new Gastronorm("1/3", 325, 176),
            new Gastronorm("1/4", 265, 162),
            new Gastronorm("1/6", 176, 162),
            new Gastronorm("1/9", 176, 108));
    private static final List<Integer> DEPTHS = List.of(20, 40, 65, 100, 150, 200);

    private record Gastronorm(String size, int length, int width) {
        Vessel deep(Ratio millimetres) {
            Ratio volume = Ratio.of((long) length * width).times(millimetres).dividedBy(Ratio.of(1000));
            return new Vessel("GN " + size + " " + millimetres + " mm", new Quantity(volume, Unit.ML), true);
        }
    }

    @Override
    public List<Vessel> gastronorm() {
        return GASTRONORM.stream()
                .flatMap(size -> DEPTHS.stream().map(depth -> size.deep(Ratio.of(depth))))
                .toList();
    }

    @Override
    public List<Filled> read(String text) {
        if (text.length() > LONGEST) {
            throw new MeasureException("That is too long; write vessels such as 12 x 130 ml.");
        }
        List<Filled> vessels = new ArrayList<>();
        for (String part : text.split("[+;]")) {
            if (!part.isBlank()) {
                vessels.add(new VesselText(part).filled());
            }
        }
        if (vessels.isEmpty()) {
            throw new MeasureException("Say which vessels, such as 12 x 130 ml or 2 x GN 1/1 65 mm, 80 %.");
        }
        return List.copyOf(vessels);
    }

    /** The container of a gastronorm size such as {@code 1/1} and a depth. */
    static Vessel gastronorm(String size, Ratio millimetres) {
        return GASTRONORM.stream()
                .filter(each -> each.size.equals(size))
                .findFirst()
                .map(each -> each.deep(millimetres))
                .orElseThrow(() -> new MeasureException("There is no gastronorm size " + size + "; use one of "
                        + String.join(
                                ", ", GASTRONORM.stream().map(Gastronorm::size).toList()) + "."));
    }
}
