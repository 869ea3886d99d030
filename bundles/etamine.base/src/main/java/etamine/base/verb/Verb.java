package etamine.base.verb;

import org.osgi.annotation.versioning.ConsumerType;

/** One thing that can be done from the console. Implementations are stateless services; calls come one at a time. */
@ConsumerType
public interface Verb {

    /** The name, arguments and options, for parsing and for help. */
    VerbUsage usage();

    /**
     * Does it.
     *
     * @throws VerbException if the call is wrong or the input is rejected; its message says what to do
     */
    Report run(VerbCall call) throws VerbException;
}
