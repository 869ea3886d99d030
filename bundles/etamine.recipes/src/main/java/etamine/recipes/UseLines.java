package etamine.recipes;

import etamine.kitchen.recipe.Use;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** Lines of a recipe as people type them: {@code 2 cup celeriac, peeled, large dice}. Thread-safe. */
@ProviderType
public interface UseLines {

    /**
     * Reads a line: an amount before or after an item by name or id, a comma and a preparation, {@code or} and items
     * that may stand in for it; {@code AP} or {@code EP} may stand at the end. Without it the line is EP when it names a
     * preparation, else AP. Words such as {@code of}, sizes and notes in brackets are passed over.
     */
    Reading read(String text);

    /** Reads a pasted list line by line, in time that grows with its length alone; blank lines are left out. */
    List<Pasted> readAll(String text);

    /** The line that {@link #read} reads as this use. */
    String write(Use use);

    /** Ways to complete what was typed so far: items first, then the preparations of an item; none of archived ones. */
    List<String> complete(String text, int atMost);

    /** What a line says. */
    sealed interface Reading {

        /** What each part of the line was taken for, in order; what is left over was blanks and marks. */
        List<Span> spans();

        /**
         * It is clear.
         *
         * @param use what it says
         * @param spans where it says so
         */
        record Clear(Use use, List<Span> spans) implements Reading {
            /** Copies the list. */
            public Clear {
                spans = List.copyOf(spans);
            }
        }

        /**
         * It is not.
         *
         * @param text a sentence that says what to do
         * @param spans what was understood and, as {@link Part#UNKNOWN}, what was not
         * @param suggestions whole lines that may be meant, likeliest first
         */
        record Unclear(String text, List<Span> spans, List<String> suggestions) implements Reading {
            /** Copies the lists. */
            public Unclear {
                spans = List.copyOf(spans);
                suggestions = List.copyOf(suggestions);
            }

            /** An unclear line of which nothing was understood. */
            public Unclear(String text) {
                this(text, List.of(), List.of());
            }
        }
    }

    /**
     * A part of a line.
     *
     * @param part what it was taken for
     * @param from the place of its first character in the text that was read
     * @param to the place after its last
     */
    record Span(Part part, int from, int to) {}

    /** What parts of a line can be. */
    enum Part {
        /** How much. */
        QUANTITY,
        /** Of what. */
        ITEM,
        /** Prepared how. */
        PREPARATION,
        /** AP or EP. */
        BASIS,
        /** What may stand in for it. */
        SUBSTITUTE,
        /** Understood, but not kept: sizes, remarks in brackets. */
        NOTE,
        /** Not understood. */
        UNKNOWN
    }

    /**
     * One line of a pasted list.
     *
     * @param number its place in what was pasted, from 1
     * @param text as pasted, without bullets and numbering; the spans count from its start
     * @param reading what it says; empty for a heading
     */
    record Pasted(int number, String text, Optional<Reading> reading) {}
}
