package etamine.kitchen.covers;

import etamine.measures.Ratio;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.osgi.annotation.versioning.ProviderType;

/** What is known of services past and to come. Thread-safe. Dates include both ends. */
@ProviderType
public interface Diary {

    /** Covers expected or served by day; days that nobody entered are absent. */
    Map<LocalDate, Integer> covers(LocalDate from, LocalDate to);

    /** Portions of each recipe per cover. */
    Map<String, Ratio> mix();

    /** What was sold. */
    List<Sale> sales(LocalDate from, LocalDate to);

    /** Expected use stated outright; it wins over what covers and mix come to. */
    List<WrittenUse> writtenUse(LocalDate from, LocalDate to);
}
