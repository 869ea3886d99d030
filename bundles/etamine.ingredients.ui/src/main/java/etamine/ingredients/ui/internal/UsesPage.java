package etamine.ingredients.ui.internal;

import etamine.base.Subject;
import etamine.kitchen.item.ItemMentions.Mention;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import java.util.List;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Everywhere in the book that names an item; Enter goes there. */
final class UsesPage {
    private final Frame frame;
    private final IngredientsModel model;
    private final ListTable<Mention> uses;
    private String asked = "";

    UsesPage(Composite parent, Frame frame, IngredientsModel model) {
        this.frame = frame;
        this.model = model;
        uses = new ListTable<>(parent, "table:uses", mention -> mention.kind() + "/" + mention.id(), columns())
                .whenEmpty("Nothing else in the book names it.")
                .onOpen(mention -> frame.go(new Subject(mention.kind(), mention.id())));
    }

    private static List<Column<Mention>> columns() {
        return List.of(
                Column.words("What", 2, Mention::kind), Column.words("Where; Enter goes there", 10, Mention::text));
    }

    /** Looks in the background, since the ledger may be long. */
    void show(String item) {
        if (!asked.equals(item)) {
            uses.setRows(List.of());
        }
        asked = item;
        frame.work("Looking where it is used", progress -> model.mentions(item), found -> {
            if (asked.equals(item) && !uses.isDisposed()) {
                uses.setRows(found);
            }
        });
    }

    Control control() {
        return uses;
    }
}
