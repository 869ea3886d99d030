package etamine.recipes.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.measures.Quantity;
import etamine.recipes.Cards;
import etamine.testing.DisplayRule;
import etamine.widgets.FormDialog;
import java.util.Optional;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class CardDialogTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private static final Cards.Terms LETTER = new Cards.Terms(Cards.Sheet.LETTER, false, Optional.empty());

    @Test
    void offersTheCardAsWrittenOnTheUsualSheet() {
        CardDialog dialog = new CardDialog(DISPLAY.shell(600, 400), "Purée", LETTER);
        Shell opened = open(dialog.dialog());
        DISPLAY.select(DISPLAY.find(opened, "dialog:ok", Button.class));
        assertThat(dialog.wish()).contains(new CardWish(false, LETTER, true));
    }

    @Test
    void takesTheWallTheAmountAndTheFile() {
        CardDialog dialog = new CardDialog(DISPLAY.shell(600, 400), "Purée", LETTER);
        Shell opened = open(dialog.dialog());
        DISPLAY.find(opened, "field:card-print", Combo.class).select(1);
        DISPLAY.find(opened, "field:card-amount", Text.class).setText("52 portion");
        DISPLAY.find(opened, "field:card-end", Combo.class).select(1);
        DISPLAY.select(DISPLAY.find(opened, "dialog:ok", Button.class));
        Cards.Terms terms = LETTER.large(true).forAmount(Optional.of(Quantity.parse("52 portion")));
        assertThat(dialog.wish()).contains(new CardWish(false, terms, false));
    }

    @Test
    void takesANumberAloneForPortions() {
        assertThat(CardWish.amount(" 52 ")).contains(Quantity.parse("52 portion"));
        assertThat(CardWish.amount("3 l")).contains(Quantity.parse("3 l"));
        assertThat(CardWish.amount(" ")).isEmpty();
        assertThat(CardWish.problem("many")).isPresent();
    }

    @Test
    void staysOpenForAnAmountOfNothing() {
        CardDialog dialog = new CardDialog(DISPLAY.shell(600, 400), "Purée", LETTER);
        Shell opened = open(dialog.dialog());
        DISPLAY.find(opened, "field:card-amount", Text.class).setText("0 g");
        DISPLAY.select(DISPLAY.find(opened, "dialog:ok", Button.class));
        assertThat(DISPLAY.find(opened, "dialog:problem", Label.class).getText())
                .contains("more than zero");
        assertThat(dialog.wish()).isEmpty();
    }

    private static Shell open(FormDialog dialog) {
        dialog.setBlockOnOpen(false);
        dialog.open();
        return dialog.getShell();
    }
}
