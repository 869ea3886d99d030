package etamine.shell;

import etamine.base.Subject;
import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/** An open station's work surface. Called on the window's thread; every call must return within a few milliseconds. */
@ConsumerType
public interface Bench {

    /** What can be done here now; shown as buttons above the bench and reachable by their keys. */
    List<BenchAction> actions();

    /** The book or the chosen day has changed: read again, keeping selection and scroll place. */
    void refresh();

    /** Shows one thing, selecting it; unknown ids are ignored. */
    void show(Subject subject);

    /** Puts the keyboard where work starts. */
    void focus();
}
