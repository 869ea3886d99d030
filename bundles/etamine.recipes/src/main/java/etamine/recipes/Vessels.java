package etamine.recipes;

import etamine.measures.MeasureException;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** Knows the sizes of moulds and pans and reads them as people write them. Thread-safe. */
@ProviderType
public interface Vessels {

    /**
     * Reads vessels, several kinds with {@code +} or {@code ;} between them: {@code 12 x 130 ml}, {@code 2 x GN 1/1 65
     * mm, 80 %}, {@code 3 x round 20 cm x 5 cm}, {@code 1 x 30 cm x 20 cm x 4 cm, 75 %}. Without a count there is one,
     * without a level it is filled to the brim.
     *
     * @throws MeasureException with a sentence that says what to do
     */
    List<Filled> read(String text);

    /** The gastronorm containers of EN 631-1 in their usual depths, largest first. */
    List<Vessel> gastronorm();
}
