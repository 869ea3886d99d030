package etamine.recipes.ui.internal;

import etamine.base.Subject;
import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.allergen.Group;
import etamine.recipes.AllergenState;
import etamine.widgets.Column;
import etamine.widgets.ListTable;
import etamine.widgets.PickList;
import etamine.widgets.Spoken;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The plates and drinks of the menu against the groups of a list. */
final class MenuPane {
    private static final List<String> WANTED = List.of(
            "all plates and drinks", "those that contain", "those that may contain or are unknown", "those without");

    private final Desk desk;
    private final AllergenModel model;
    private final Composite pane;
    private final Combo wanted;
    private final Combo group;
    private Optional<ListTable<MenuLine>> table = Optional.empty();
    private Optional<DeclarationList> shown = Optional.empty();

    MenuPane(Composite parent, Desk desk, AllergenModel model) {
        this.desk = desk;
        this.model = model;
        pane = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 0;
        pane.setLayout(layout);
        Label caption = new Label(pane, SWT.NONE);
        caption.setText("Show");
        wanted = Spoken.id(PickList.in(pane), "field:menu-wanted");
        wanted.setItems(WANTED.toArray(String[]::new));
        wanted.select(0);
        wanted.addListener(SWT.Selection, event -> fill());
        Spoken.label(wanted, caption);
        group = Spoken.id(PickList.in(pane), "field:menu-group");
        group.addListener(SWT.Selection, event -> fill());
        Spoken.name(group, "Group");
    }

    Composite control() {
        return pane;
    }

    /** Shows the menu by that list; another list has other columns. */
    void show(DeclarationList list) {
        if (!shown.equals(Optional.of(list))) {
            shown = Optional.of(list);
            table.ifPresent(ListTable::dispose);
            table = Optional.of(build(list));
            group.setItems(list.groups().stream().map(Group::name).toArray(String[]::new));
            group.select(0);
        }
        fill();
    }

    private ListTable<MenuLine> build(DeclarationList list) {
        List<Column<MenuLine>> columns = new ArrayList<>();
        columns.add(Column.words("Plate or drink", 8, MenuLine::name).keeping(24));
        list.groups().forEach(each -> columns.add(column(each)));
        columns.add(Column.words("Not on this list", 3, MenuLine::others));
        ListTable<MenuLine> built = new ListTable<>(pane, "table:menu-allergens", MenuLine::id, columns)
                .findable("Find a plate or drink")
                .whenEmpty("Nothing fits.")
                .onOpen(line -> desk.frame().go(new Subject("recipe", line.id())));
        built.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 3, 1));
        return built;
    }

    private static Column<MenuLine> column(Group group) {
        Comparator<MenuLine> bySeverity = Comparator.comparing(line -> line.state(group.id()));
        return Column.<MenuLine>figures(
                        group.brief(), 1, line -> AllergenModel.mark(line.state(group.id())), bySeverity)
                .withTone(line -> AllergenModel.tone(line.state(group.id())));
    }

    private void fill() {
        group.setEnabled(wanted.getSelectionIndex() > 0);
        shown.ifPresent(list -> table.ifPresent(rows -> rows.setRows(
                model.menu(list).stream().filter(line -> fits(list, line)).toList())));
        pane.requestLayout();
    }

    private boolean fits(DeclarationList list, MenuLine line) {
        AllergenState state = line.state(
                list.groups().get(Math.max(0, group.getSelectionIndex())).id());
        return switch (wanted.getSelectionIndex()) {
            case 1 -> state == AllergenState.CONTAINS;
            case 2 -> state == AllergenState.MAY_CONTAIN || state == AllergenState.UNKNOWN;
            case 3 -> state == AllergenState.NONE || state == AllergenState.BELOW;
            default -> true;
        };
    }
}
