package etamine.kitchen.allergen;

import java.util.Optional;

/**
 * What one list says of one allergen.
 *
 * @param group where it belongs
 * @param standing how the list stands to it
 * @param ask what has to be named or settled, as a sentence; empty when nothing
 */
public record Declaration(Group group, Standing standing, Optional<String> ask) {

    /** Whether it is to be declared, or shown as if it were because nobody has settled it. */
    public boolean declared() {
        return standing != Standing.BELOW;
    }
}
