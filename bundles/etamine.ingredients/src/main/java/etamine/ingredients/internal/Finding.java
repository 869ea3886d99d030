package etamine.ingredients.internal;

import etamine.base.Problem;
import etamine.base.Severity;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;

/**
 * Something wrong or doubtful about an ingredient.
 *
 * @param code its stable name
 * @param severity errors are not kept
 * @param pointer where in the ingredient's document
 * @param text a sentence that says what to do
 */
record Finding(String code, Severity severity, String pointer, String text) {

    boolean isError() {
        return severity == Severity.ERROR;
    }

    Trouble trouble() {
        return new Trouble(pointer, text);
    }

    Problem problem(String id) {
        return new Problem(code, severity, IngredientShelf.NAME + "/" + id, text);
    }
}
