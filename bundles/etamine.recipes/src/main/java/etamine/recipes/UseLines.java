package etamine.recipes;

import etamine.kitchen.recipe.Use;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** Lines of a recipe as people type them: {@code 2 cup celeriac, peeled, large dice}. Thread-safe. */
@ProviderType
public interface UseLines {

    /**
     * Reads a line: an amount, an item by name or id, a comma and a preparation; {@code AP} or {@code EP} may stand at
     * the end. Without it the line is EP when it names a preparation, else AP.
     */
    Reading read(String text);

    /** The line that {@link #read} reads as this use. */
    String write(Use use);

    /** Ways to complete what was typed so far: items first, then the preparations of an item. */
    List<String> complete(String text, int atMost);

    /** What a line says. */
    sealed interface Reading {
        /**
         * It is clear.
         *
         * @param use what it says
         */
        record Clear(Use use) implements Reading {}

        /**
         * It is not.
         *
         * @param text a sentence that says what to do
         */
        record Unclear(String text) implements Reading {}
    }
}
