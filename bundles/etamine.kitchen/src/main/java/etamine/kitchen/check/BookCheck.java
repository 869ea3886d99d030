package etamine.kitchen.check;

import etamine.base.Problem;
import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/** Checks one module's part of the book. Thread-safe, reads only. */
@ConsumerType
public interface BookCheck {

    /** What is wrong or doubtful; {@code where} is {@code shelf/id}. */
    List<Problem> check();
}
