package etamine.shell;

import java.util.Set;
import org.eclipse.swt.widgets.Composite;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * A place to work, one per module. A station is a service that depends on its module's services, so it comes and goes
 * with them; when it goes, the window replaces an open bench by a note and lets the widgets go.
 */
@ConsumerType
public interface Station {

    /** Stable identifier, such as {@code ingredients}. */
    String id();

    /** The name on the list of stations. */
    String name();

    /** The name of its icon in the palette, without ending. */
    String icon();

    /** Its place in the order the work happens: smaller is earlier; the pass is 0, settings-like stations from 900. */
    int order();

    /** The kinds of {@link etamine.base.Subject} it can show. */
    Set<String> shows();

    /**
     * Builds the bench.
     *
     * @param parent has a fill layout; the bench makes one child in it
     * @param frame the window around it, for as long as the bench lives
     */
    Bench open(Composite parent, Frame frame);
}
