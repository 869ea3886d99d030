package etamine.costing.ui.internal;

import etamine.base.Subject;
import etamine.costing.ButcherSheet;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Choice;
import etamine.widgets.Column;
import etamine.widgets.Fonts;
import etamine.widgets.FormPane;
import etamine.widgets.ListTable;
import etamine.widgets.MoneyField;
import etamine.widgets.NumberField;
import etamine.widgets.Palette;
import etamine.widgets.QuantityField;
import etamine.widgets.Sentence;
import etamine.widgets.Spoken;
import etamine.widgets.StackBlocks;
import etamine.widgets.Tone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** What the parts of something cost, and what a portion costs at another dealer's price. */
final class ButcherPage implements CostPage {
    private static final String[] PARTS = {
        "Weight", "Of weight", "Valued at", "Bears", "Cost / kg", "Factor / kg", "New / kg"
    };
    private static final String[] PORTIONS = {"Portions", "One costs", "Factor", "One costs then"};
    private final Frame frame;
    private final ButcherModel model;
    private final PaperRack papers;
    private final Composite body;
    private final Combo recipe;
    private final MoneyField dealer;
    private final QuantityField portion;
    private final NumberField portions;
    private final Label sentence;
    private final Label notes;
    private final Label need;
    private final StackBlocks blocks;
    private final ListTable<ButcherModel.Row> rows;
    private final ListTable<ButcherModel.Row> servings;
    private List<Choice> choices = List.of();
    private Optional<ButcherSheet> sheet = Optional.empty();

    ButcherPage(Composite parent, Frame frame, ButcherModel model, PaperRack papers) {
        this.frame = frame;
        this.model = model;
        this.papers = papers;
        body = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout();
        layout.marginWidth = 0;
        layout.marginHeight = 2;
        body.setLayout(layout);
        FormPane form = new FormPane(body);
        GridData low = new GridData(SWT.FILL, SWT.TOP, true, false);
        low.heightHint = 126;
        form.setLayoutData(low);
        recipe = form.field("Test of", "field:butcher", false, p -> new Combo(p, SWT.READ_ONLY));
        dealer = form.money("Dealer's price for 1 kg, to try", "field:dealer", model.currency());
        portion = form.quantity("Portion, where another than the recipe's", "field:butcher-portion");
        portions =
                form.number("Portions to buy for", "field:butcher-portions", p -> new NumberField(p, "1", "100000", 0));
        recipe.addListener(SWT.Selection, event -> read());
        dealer.onChange(value -> read());
        portion.onChange(value -> read());
        portions.onChange(value -> read());
        sentence = line("butcher:sentence");
        sentence.setFont(Fonts.bold(body));
        notes = line("butcher:notes");
        notes.setForeground(Palette.of(body).text(Tone.WARN));
        need = line("butcher:need");
        blocks = new StackBlocks(body).bandOnly();
        blocks.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        SashForm tables = new SashForm(body, SWT.VERTICAL);
        tables.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        rows = table(tables, "table:butcher", PARTS)
                .whenEmpty("No recipe takes one weight of something apart yet. Write a breakdown under Recipes.");
        servings = table(tables, "table:butcher-portions", PORTIONS)
                .whenEmpty("No usable part has a portion. Type one above, or set it on the recipe.");
        tables.setWeights(58, 42);
    }

    private ListTable<ButcherModel.Row> table(Composite parent, String id, String[] headings) {
        return new ListTable<>(parent, id, ButcherModel.Row::item, columns(headings))
                .onSelect(picked -> sheet.map(ButcherSheet::explained).ifPresent(frame::explain))
                .onOpen(row -> frame.go(new Subject("item", row.item())));
    }

    private Label line(String id) {
        Label label = Spoken.id(new Label(body, SWT.WRAP), id);
        label.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        return label;
    }

    private static List<Column<ButcherModel.Row>> columns(String[] headings) {
        Comparator<ButcherModel.Row> asShown = Comparator.comparing(ButcherModel.Row::number);
        List<Column<ButcherModel.Row>> columns = new ArrayList<>();
        columns.add(Column.figures("#", 1, row -> String.valueOf(row.number()), asShown));
        columns.add(Column.words("Part", 4, ButcherModel.Row::name));
        for (int at = 0; at < headings.length; at++) {
            int cell = at;
            columns.add(Column.figures(headings[at], 1, row -> row.cell(cell), asShown));
        }
        return columns;
    }

    private void offer() {
        String shown = recipe.getText();
        choices = model.choices();
        recipe.setItems(choices.stream().map(Choice::label).toArray(String[]::new));
        recipe.select(Math.max(0, recipe.indexOf(shown)));
    }

    private void read() {
        sheet = Optional.empty();
        String problem = "";
        int at = recipe.getSelectionIndex();
        if (at >= 0 && at < choices.size()) {
            try {
                sheet = Optional.of(model.sheet(choices.get(at).id(), dealer.value(), portion.value()));
            } catch (IllegalArgumentException impossible) {
                problem = String.valueOf(impossible.getMessage());
            }
        }
        paint(problem);
    }

    private void paint(String problem) {
        Sentence.say(sentence, sheet.map(model::sentence).orElse(""));
        String doubts = sheet.map(found -> String.join(" ", found.notes())).orElse(problem);
        Sentence.say(notes, doubts);
        Sentence.say(
                need,
                sheet.flatMap(found -> portions.value().map(count -> model.need(found, count.longValue())))
                        .orElse(""));
        blocks.show(sheet.map(model::blocks).orElse(List.of()));
        rows.setRows(sheet.map(model::rows).orElse(List.of()));
        servings.setRows(sheet.map(model::portions).orElse(List.of()));
        body.layout();
        sheet.map(ButcherSheet::explained).ifPresentOrElse(frame::explain, frame::explainNothing);
        frame.actionsChanged();
    }

    @Override
    public Control control() {
        return body;
    }

    @Override
    public List<BenchAction> actions() {
        return List.of(papers.action(() -> sheet.map(
                                found -> List.of(new PaperRack.Sheet("butcher's sheet", rack -> rack.butcher(found))))
                        .orElse(List.of()))
                .when(sheet::isPresent));
    }

    @Override
    public void refresh() {
        offer();
        read();
    }

    @Override
    public void focus() {
        recipe.setFocus();
    }
}
