package etamine.costing.ui.internal;

import etamine.base.Subject;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Column;
import etamine.widgets.Fonts;
import etamine.widgets.ListTable;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** The plates with their figures above; below what the selected one is made of, or what to charge for it. */
final class PlatesPage implements CostPage {
    private final Frame frame;
    private final PlatesModel model;
    private final Consumer<String> tryOut;
    private final SashForm sash;
    private final ListTable<PlateRow> plates;
    private final Label title;
    private final Button costs;
    private final Button charge;
    private final StackLayout stack = new StackLayout();
    private final Composite stage;
    private final PlatePane pane;
    private final PricePanel price;
    private List<PlateRow> rows = List.of();
    private boolean menuOnly = true;

    PlatesPage(Composite parent, Frame frame, CostingParts parts, Consumer<String> tryOut) {
        this.frame = frame;
        this.model = new PlatesModel(parts);
        this.tryOut = tryOut;
        sash = new SashForm(parent, SWT.VERTICAL);
        plates = new ListTable<>(sash, "table:costs", PlateRow::id, columns())
                .findable("Find a plate or recipe")
                .whenEmpty(
                        "Nothing to cost yet. What is written under Recipes with a menu price appears here; where Recipes"
                                + " is not in the list of stations, start it under Modules.")
                .onSelect(selected -> selected())
                .onOpen(row -> frame.go(new Subject("recipe", row.id())));
        Composite below = new Composite(sash, SWT.NONE);
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 0;
        layout.marginHeight = 4;
        below.setLayout(layout);
        title = Spoken.id(new Label(below, SWT.WRAP), "plate:title");
        title.setFont(Fonts.heading(title));
        title.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        costs = toggle(below, "What it costs", "action:show-cost", false);
        charge = toggle(below, "What to charge", "action:show-price", true);
        stage = new Composite(below, SWT.NONE);
        stage.setLayout(stack);
        stage.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 3, 1));
        pane = new PlatePane(stage, frame);
        Currency currency = parts.kitchen().house().currency();
        price = new PricePanel(stage, frame, new PriceModel(parts), currency);
        sash.setWeights(48, 52);
        bring(false);
    }

    private Button toggle(Composite parent, String label, String id, boolean toCharge) {
        Button button = Spoken.id(new Button(parent, SWT.TOGGLE | SWT.FLAT), id);
        button.setText(label);
        button.setLayoutData(new GridData(SWT.END, SWT.CENTER, false, false));
        button.addListener(SWT.Selection, event -> bring(toCharge));
        return button;
    }

    private static List<Column<PlateRow>> columns() {
        return List.of(
                Column.words("Plate or recipe", 5, PlateRow::name),
                Column.<PlateRow>figures("Cost", 1, PlateRow::costText, Comparator.comparing(PlateRow::cost))
                        .withTone(row -> row.lower() ? Tone.WARN : Tone.PLAIN),
                Column.figures("Net price", 1, PlateRow::netText, figure(PlateRow.OnMenu::net)),
                Column.<PlateRow>figures(
                                "Food cost",
                                1,
                                PlateRow::percentText,
                                figure(menu -> menu.percent().orElse(java.math.BigDecimal.ZERO)))
                        .withIcon(row -> row.doubtful() ? "warning" : "")
                        .withTone(row -> row.doubtful() ? Tone.WARN : Tone.PLAIN),
                Column.figures("Contribution", 1, PlateRow::contributionText, figure(PlateRow.OnMenu::contribution)));
    }

    private static <V extends Comparable<? super V>> Comparator<PlateRow> figure(Function<PlateRow.OnMenu, V> value) {
        return Comparator.comparing(
                row -> row.menu().map(value).orElse(null), Comparator.nullsFirst(Comparator.naturalOrder()));
    }

    private void bring(boolean toCharge) {
        costs.setSelection(!toCharge);
        charge.setSelection(toCharge);
        stack.topControl = toCharge ? price : pane;
        stage.layout();
        if (toCharge) {
            price.show(plates.selected().map(PlateRow::id));
        } else {
            selected();
        }
        frame.actionsChanged();
    }

    private void selected() {
        Optional<PlateRow> row = plates.selected();
        Optional<PlateDetail> detail = plates.selection().size() > 1 && !charge.getSelection()
                ? Optional.of(model.several(plates.selection(), rows))
                : row.flatMap(found -> model.detail(found.id(), rows));
        title.setText(detail.map(PlateDetail::title).orElse("").replace("&", "&&"));
        pane.show(detail);
        detail.map(PlateDetail::story).ifPresentOrElse(frame::explain, frame::explainNothing);
        if (charge.getSelection()) {
            price.show(row.map(PlateRow::id));
        }
        title.getParent().layout();
        frame.actionsChanged();
    }

    private void list() {
        plates.setRows(rows.stream().filter(row -> !menuOnly || row.onMenu()).toList());
    }

    private void toggleMenu() {
        menuOnly = !menuOnly;
        list();
        frame.actionsChanged();
    }

    /** The recipe that is selected. */
    Optional<String> selectedRecipe() {
        return plates.selected().map(PlateRow::id);
    }

    @Override
    public Control control() {
        return sash;
    }

    @Override
    public List<BenchAction> actions() {
        String label = menuOnly ? "Show components too" : "Show the menu only";
        return List.of(
                BenchAction.of("which", label, "recipes", this::toggleMenu).onKey(SWT.MOD1 | 'M'),
                BenchAction.of(
                                "try",
                                "Try changes",
                                "scale",
                                () -> selectedRecipe().ifPresent(tryOut))
                        .when(() -> selectedRecipe().isPresent()));
    }

    @Override
    public void refresh() {
        rows = model.rows();
        list();
        selected();
    }

    @Override
    public void show(Subject subject) {
        rows.stream().filter(row -> row.id().equals(subject.id())).findFirst().ifPresent(row -> {
            if (menuOnly && !row.onMenu()) {
                toggleMenu();
            }
            plates.select(row.id());
            selected();
        });
    }

    @Override
    public void focus() {
        plates.setFocus();
    }
}
