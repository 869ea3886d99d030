package etamine.recipes;

import etamine.base.Printout;
import org.osgi.annotation.versioning.ProviderType;

/** Lays rivers out for paper, with a table of everything drawn. Thread-safe; there while papers can be written. */
@ProviderType
public interface RiverPapers {

    /** A river on a sheet lying on its long side, to save or print. */
    Printout printout(River river, Cards.Sheet sheet);
}
