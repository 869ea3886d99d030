package etamine.recipes.internal.rule;

import etamine.base.Problem;
import etamine.base.Severity;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.recipes.internal.RecipeShelf;

/**
 * Something wrong or doubtful about a recipe.
 *
 * @param code its stable name
 * @param grade how much it matters
 * @param pointer where in the recipe's document
 * @param text a sentence that says what to do
 */
public record Finding(String code, Grade grade, String pointer, String text) {

    /** How much a finding matters, and to whom. */
    public enum Grade {
        /** The recipe cannot be made; it is not even kept. */
        SENSELESS,
        /** A figure is missing; kept while somebody works on it, but not taken from a file. */
        INCOMPLETE,
        /** It may be meant. */
        DOUBTFUL
    }

    public Trouble trouble() {
        return new Trouble(pointer, text);
    }

    public Problem problem(String recipe) {
        Severity severity = grade == Grade.DOUBTFUL ? Severity.WARNING : Severity.ERROR;
        return new Problem(code, severity, RecipeShelf.NAME + "/" + recipe, text);
    }
}
