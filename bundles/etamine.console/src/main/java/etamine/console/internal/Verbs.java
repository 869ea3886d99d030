package etamine.console.internal;

import etamine.base.verb.Verb;
import java.util.List;
import java.util.Optional;

/** The verbs there are now; those that work on a book come when one is open. */
interface Verbs {

    /** The verb of that name. */
    Optional<Verb> find(String name);

    /** All of them. */
    List<Verb> all();
}
