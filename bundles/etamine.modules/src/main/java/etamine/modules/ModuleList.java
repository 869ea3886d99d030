package etamine.modules;

import etamine.base.Subscription;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** The installed modules. Thread-safe; starting and stopping may take a second, so keep them off the window's thread. */
@ProviderType
public interface ModuleList {

    /** All modules as they are now, by id. */
    List<InstalledModule> modules();

    /**
     * Starts a module and remembers that it shall run.
     *
     * @param id its id, or the id without {@code etamine.}
     * @throws ModuleException if there is no such module or it cannot start; the message says why
     */
    void start(String id) throws ModuleException;

    /**
     * Stops a module and remembers that it shall not run; its data stays in the book.
     *
     * @param id its id, or the id without {@code etamine.}
     * @throws ModuleException if there is no such module or everything else needs it
     */
    void stop(String id) throws ModuleException;

    /** Calls {@code listener} some time after a module's state changed, on any thread. */
    Subscription onChange(Runnable listener);
}
