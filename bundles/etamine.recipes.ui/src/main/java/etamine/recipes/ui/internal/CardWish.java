package etamine.recipes.ui.internal;

import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.recipes.Cards;
import etamine.recipes.Cards.Terms;
import etamine.widgets.Choice;
import java.util.List;
import java.util.Optional;

/**
 * What somebody wants on paper.
 *
 * @param menu whether it is the allergens of the whole menu rather than a card
 * @param terms the sheet, the print and for how much
 * @param print whether it goes to a printer rather than into a file
 */
record CardWish(boolean menu, Terms terms, boolean print) {
    private static final String CARD = "card";
    private static final String MENU = "menu";
    private static final String HAND = "hand";
    private static final String WALL = "wall";
    private static final String PHOTO = "photo";
    private static final String PLAIN = "plain";
    private static final String PRINT = "print";
    private static final String SAVE = "save";

    static List<Choice> papers(String recipe) {
        return List.of(new Choice(CARD, "Card of " + recipe), new Choice(MENU, "Allergens of the whole menu"));
    }

    static List<Choice> sheets() {
        return List.of(new Choice(Cards.Sheet.A4.name(), "A4"), new Choice(Cards.Sheet.LETTER.name(), "Letter"));
    }

    static List<Choice> prints() {
        return List.of(new Choice(HAND, "To read in the hand"), new Choice(WALL, "Large, for the wall"));
    }

    static List<Choice> photos() {
        return List.of(new Choice(PHOTO, "With its photo"), new Choice(PLAIN, "Without"));
    }

    /** The same with the photo or without, by the id of the choice; in large print there is none. */
    CardWish withPhoto(String photo) {
        return new CardWish(menu, terms.withPhoto(photo.equals(PHOTO)), print);
    }

    static List<Choice> ends() {
        return List.of(new Choice(PRINT, "Print"), new Choice(SAVE, "Save as PDF or web page"));
    }

    /** The wish that was chosen, by the ids of the choices. */
    static CardWish of(String paper, String sheet, String print, Optional<Quantity> amount, String end) {
        Terms terms = new Terms(Cards.Sheet.valueOf(sheet), print.equals(WALL), amount);
        return new CardWish(paper.equals(MENU), terms, end.equals(PRINT));
    }

    /** How much was typed: a number alone means portions, nothing means as written. */
    static Optional<Quantity> amount(String typed) {
        String text = typed.strip();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(QuantityText.parse(text.matches("[0-9]{1,6}") ? text + " portion" : text));
    }

    /** What is wrong with an amount as typed. */
    static Optional<String> problem(String typed) {
        try {
            return amount(typed)
                    .filter(wanted -> wanted.signum() <= 0)
                    .map(wanted -> "Write more than zero, such as 12, or leave it empty.");
        } catch (MeasureException unclear) {
            return Optional.of(unclear.getMessage());
        }
    }
}
