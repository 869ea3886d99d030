package etamine.base;

import org.osgi.annotation.versioning.ConsumerType;

/** Where long work says how far it is and learns that it should stop. Called from the working thread. */
@ConsumerType
public interface Progress {

    /** Says what is being done now and how far the whole is, from 0 to 1; a negative share means unknown. */
    void at(String step, double share);

    /** Whether the person asked to stop; work answers by leaving everything as it was. */
    boolean cancelled();

    /** Progress that nobody watches and nobody cancels. */
    static Progress unseen() {
        return new Progress() {
            @Override
            public void at(String step, double share) {
                // nobody watches
            }

            @Override
            public boolean cancelled() {
                return false;
            }
        };
    }
}
