package etamine.kitchen.today;

import java.time.Instant;
import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/** Makes calls. Asked in the background whenever the book changes and every few minutes; an exception becomes a call. */
@ConsumerType
public interface CallSource {

    /** The calls at that moment. */
    List<Call> calls(Instant now);
}
