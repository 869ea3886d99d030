package etamine.recipes.ui.internal;

import etamine.recipes.Cards.Terms;
import etamine.widgets.FormDialog;
import etamine.widgets.FormPane;
import java.util.Optional;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks what is to go on paper and how. */
final class CardDialog {
    private final Shell parent;
    private final String recipe;
    private final Terms usual;
    private Optional<Fields> fields = Optional.empty();
    private Optional<CardWish> wish = Optional.empty();

    private record Fields(Pick paper, Pick sheet, Pick print, Pick photo, Text amount, Pick end) {
        CardWish wish() {
            return CardWish.of(paper.id(), sheet.id(), print.id(), CardWish.amount(amount.getText()), end.id())
                    .withPhoto(photo.id());
        }
    }

    CardDialog(Shell parent, String recipe, Terms usual) {
        this.parent = parent;
        this.recipe = recipe;
        this.usual = usual;
    }

    /** What was asked for; empty when the person changed their mind. */
    Optional<CardWish> ask() {
        dialog().ask();
        return wish;
    }

    FormDialog dialog() {
        return new FormDialog(parent, "Print or save a card", this::fill)
                .button("Go on")
                .check(() ->
                        fields.flatMap(each -> CardWish.problem(each.amount().getText())))
                .onAccept(() -> wish = fields.map(Fields::wish));
    }

    Optional<CardWish> wish() {
        return wish;
    }

    private void fill(FormPane form) {
        Pick paper = Pick.wide(form, "Paper", "field:card-paper", CardWish.papers(recipe));
        Pick sheet = Pick.in(form, "Sheet", "field:card-sheet", CardWish.sheets());
        sheet.choose(usual.sheet().name());
        Pick print = Pick.in(form, "Print", "field:card-print", CardWish.prints());
        Pick photo = Pick.in(form, "Photo (not in large print)", "field:card-photo", CardWish.photos());
        Text amount = form.text("For how many portions, or how much", "field:card-amount");
        amount.setMessage("as written; 52, or 3 l");
        Pick end = Pick.in(form, "Then", "field:card-end", CardWish.ends());
        fields = Optional.of(new Fields(paper, sheet, print, photo, amount, end));
    }
}
