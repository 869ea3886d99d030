package etamine.recipes.internal;

import etamine.base.Problem;
import etamine.base.Severity;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;

/**
 * Something wrong or doubtful about a recipe.
 *
 * @param code its stable name
 * @param grade how much it matters
 * @param pointer where in the recipe's document
 * @param text a sentence that says what to do
 */
record Finding(String code, Grade grade, String pointer, String text) {

    /** How much a finding matters, and to whom. */
    enum Grade {
        /** The recipe cannot be made; it is not even kept. */
        SENSELESS,
        /** A figure is missing; kept while somebody works on it, but not taken from a file. */
        INCOMPLETE,
        /** It may be meant. */
        DOUBTFUL
    }

    Trouble trouble() {
        return new Trouble(pointer, text);
    }

    Problem problem(String recipe) {
        Severity severity = grade == Grade.DOUBTFUL ? Severity.WARNING : Severity.ERROR;
        return new Problem(code, severity, RecipeShelf.NAME + "/" + recipe, text);
    }
}
