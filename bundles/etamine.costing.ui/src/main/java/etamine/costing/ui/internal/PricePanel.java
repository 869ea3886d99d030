package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.costing.PriceAdvice;
import etamine.costing.PriceRounding;
import etamine.shell.Frame;
import etamine.widgets.Fonts;
import etamine.widgets.FormPane;
import etamine.widgets.MoneyField;
import etamine.widgets.NumberField;
import etamine.widgets.Palette;
import etamine.widgets.Spoken;
import etamine.widgets.Tone;
import java.math.BigDecimal;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What to charge: how the price is to be found on the left, the price and what it leaves on the right. */
final class PricePanel extends Composite {
    private static final String[] SIDES = {"Up to the next", "To the nearest", "Down to the next"};
    private final Frame frame;
    private final PriceModel model;
    private final Combo way;
    private final NumberField figure;
    private final MoneyField cost;
    private final NumberField tax;
    private final Combo rounding;
    private final Button included;
    private final Label price;
    private final Label remark;
    private final FigureRows rows;
    private final Button write;
    private Optional<String> recipe = Optional.empty();
    private Optional<PriceAdvice> advice = Optional.empty();
    private boolean filling;

    PricePanel(Composite parent, Frame frame, PriceModel model, java.util.Currency currency) {
        super(parent, SWT.NONE);
        this.frame = frame;
        this.model = model;
        setLayout(new org.eclipse.swt.layout.FillLayout());
        SashForm sash = new SashForm(this, SWT.HORIZONTAL);
        FormPane form = new FormPane(sash);
        way = form.field("The price is to come from", "field:price-way", false, p -> new Combo(p, SWT.READ_ONLY));
        for (PriceModel.Way each : PriceModel.Way.values()) {
            way.add(each.label());
        }
        way.select(0);
        figure = form.number("Which is to be", "field:price-figure", p -> new NumberField(p, "-1000000", "1000000", 4));
        cost = form.money("Cost of one portion", "field:price-cost", currency);
        tax = form.number("Tax, %", "field:price-tax", p -> new NumberField(p, "0", "100", 4));
        rounding = form.field("Round", "field:price-rounding", false, p -> new Combo(p, SWT.READ_ONLY));
        rounding.setItems(SIDES);
        included = form.check("Menu prices include tax", "field:price-included");
        included.setSelection(true);
        Composite answer = new Composite(sash, SWT.NONE);
        GridLayout layout = new GridLayout();
        layout.marginHeight = 6;
        answer.setLayout(layout);
        price = Spoken.id(new Label(answer, SWT.NONE), "price:answer");
        price.setFont(Fonts.figure(answer));
        price.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        remark = Spoken.id(new Label(answer, SWT.WRAP), "price:remark");
        remark.setForeground(Palette.of(answer).quiet());
        remark.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        rows = new FigureRows(answer);
        rows.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        write = Spoken.id(new Button(answer, SWT.PUSH), "action:write-price");
        write.setLayoutData(new GridData(SWT.LEFT, SWT.TOP, false, false));
        write.addListener(SWT.Selection, event -> write());
        sash.setWeights(66, 34);
        listen();
    }

    private void listen() {
        way.addListener(SWT.Selection, event -> {
            figure.set(model.start(recipe, chosen()));
            ask();
        });
        rounding.addListener(SWT.Selection, event -> ask());
        included.addListener(SWT.Selection, event -> ask());
        figure.onChange(value -> ask());
        cost.onChange(value -> ask());
        tax.onChange(value -> ask());
    }

    /** Asks about a plate of the book, or about a cost that is typed in. */
    void show(Optional<String> about) {
        boolean another = !about.equals(recipe) || figure.text().isEmpty();
        recipe = about;
        filling = true;
        if (another) {
            figure.set(model.start(about, chosen()));
            rounding.select(model.rounding().ordinal());
            tax.set(model.tax(about));
        }
        if (another || about.isPresent()) {
            cost.set(about.flatMap(model::cost));
        }
        filling = false;
        ask();
    }

    private PriceModel.Way chosen() {
        return PriceModel.Way.values()[Math.max(0, way.getSelectionIndex())];
    }

    private void ask() {
        if (filling) {
            return;
        }
        advice = Optional.empty();
        String problem = "Type what one portion costs and what the price should come to.";
        if (cost.value().isPresent()
                && figure.value().isPresent()
                && tax.value().isPresent()) {
            try {
                advice = Optional.of(model.advise(new PriceModel.Asked(
                        recipe,
                        cost.value().get(),
                        chosen(),
                        figure.value().get(),
                        tax.value().get(),
                        included.getSelection(),
                        PriceRounding.Way.values()[Math.max(0, rounding.getSelectionIndex())])));
                problem = "";
            } catch (IllegalArgumentException impossible) {
                problem = String.valueOf(impossible.getMessage());
            }
        }
        paint(problem);
    }

    private void paint(String problem) {
        price.setText(advice.map(found -> model.full(found.menu())).orElse(""));
        String notes = advice.map(found -> "For the menu, rounded "
                        + SIDES[rounding.getSelectionIndex()].toLowerCase(java.util.Locale.ROOT) + " " + model.endings()
                        + ". " + String.join(" ", found.notes()))
                .orElse(problem);
        remark.setText(notes.replace("&", "&&"));
        remark.setForeground(
                problem.isEmpty() ? Palette.of(this).quiet() : Palette.of(this).text(Tone.BAD));
        rows.show(advice.map(model::rows).orElse(java.util.List.of()));
        boolean same = recipe.flatMap(model::now)
                .flatMap(now -> advice.map(found -> found.menu().amount().compareTo(now) == 0))
                .orElse(false);
        boolean own = recipe.flatMap(model::cost).equals(cost.value());
        boolean possible = recipe.isPresent() && own && advice.isPresent() && included.getSelection() && !same;
        write.setText(
                same
                        ? "This is the price on the menu"
                        : "Write "
                                + advice.map(found -> found.menu().toString()).orElse("it") + " on the menu");
        write.setEnabled(possible);
        write.setVisible(own || recipe.isEmpty());
        write.getParent().layout(true, true);
        advice.map(PriceAdvice::explained).ifPresent(this::explain);
    }

    private void explain(Explanation explanation) {
        if (isVisible()) {
            frame.explain(explanation);
        }
    }

    private void write() {
        recipe.ifPresent(id -> advice.ifPresent(found -> {
            BigDecimal amount = found.menu().amount();
            frame.work(
                    "Writing the menu price",
                    progress -> model.write(id, amount),
                    notes -> frame.say(
                            notes.isEmpty()
                                    ? "The menu price is " + amount + " now. Undo takes it back."
                                    : String.join(" ", notes)));
        }));
    }

    @Override
    public boolean setFocus() {
        return figure.setFocus();
    }
}
