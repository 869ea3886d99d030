package etamine.recipes;

import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.measures.Unit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What a file of recipes was found to hold.
 *
 * @param file the file
 * @param recipes the recipes, in the order of the file
 * @param problems what was wrong with the file as a whole, as sentences that say what to do
 */
public record FoundRecipes(Path file, List<Found> recipes, List<String> problems) {

    /** Copies the lists. */
    public FoundRecipes {
        recipes = List.copyOf(recipes);
        problems = List.copyOf(problems);
    }

    /** How a recipe that was found stands to the book. */
    public enum Presence {
        /** The book has none like it. */
        NEW,
        /** The book has one of that identifier, and it would be changed. */
        CHANGES,
        /** The book has exactly this one. */
        SAME
    }

    /**
     * One recipe.
     *
     * @param number its place in the file, from 1
     * @param pointer where in the file it stands, as a JSON pointer
     * @param recipe what was understood of it
     * @param presence how it stands to the book
     * @param lines what it takes, line by line
     * @param remarks what else was not understood or has no place in this book, as sentences
     * @param entry all of it in the exchange form, with members that only a newer program understands
     * @param photo the entry of its photo in the exchange form, where the file has it
     */
    public record Found(
            int number,
            String pointer,
            Recipe recipe,
            Presence presence,
            List<Line> lines,
            List<String> remarks,
            String entry,
            Optional<String> photo) {

        /** One without a photo. */
        public Found(
                int number,
                String pointer,
                Recipe recipe,
                Presence presence,
                List<Line> lines,
                List<String> remarks,
                String entry) {
            this(number, pointer, recipe, presence, lines, remarks, entry, Optional.empty());
        }

        /** The same with other remarks. */
        public Found withRemarks(List<String> changed) {
            return new Found(number, pointer, recipe, presence, lines, changed, entry, photo);
        }

        /** The same with a photo, which its recipe and entry name. */
        public Found pictured(Recipe named, String naming, String picture) {
            return new Found(number, pointer, named, presence, lines, remarks, naming, Optional.of(picture));
        }

        /** Copies the lists. */
        public Found {
            lines = List.copyOf(lines);
            remarks = List.copyOf(remarks);
        }

        /** Whether every line is understood, those of ingredients that would be new among them or not. */
        public boolean complete(boolean newIngredients) {
            return lines.stream()
                    .allMatch(line -> line.state() == State.CLEAR || newIngredients && line.state() == State.NEW);
        }
    }

    /** How well a line was understood. */
    public enum State {
        /** Wholly. */
        CLEAR("understood"),
        /** Its amount; the ingredient is not in the book and can be added. */
        NEW("new ingredient"),
        /** Not. */
        UNCLEAR("not understood");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** As people read it. */
        public String inWords() {
            return words;
        }
    }

    /**
     * One line of what a recipe takes.
     *
     * @param text as it stands in the file
     * @param state how well it was understood
     * @param use what it says; empty when it is not understood
     * @param fresh the ingredient that would be added
     * @param remark a sentence that says what to do; empty when there is nothing to do
     */
    public record Line(String text, State state, Optional<Use> use, Optional<Fresh> fresh, String remark) {}

    /**
     * An ingredient that the book does not have.
     *
     * @param id the identifier it would get
     * @param name what it would be called
     * @param countIn the unit it would be counted in
     */
    public record Fresh(String id, String name, Unit countIn) {}
}
