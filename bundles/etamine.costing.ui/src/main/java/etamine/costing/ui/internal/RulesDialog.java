package etamine.costing.ui.internal;

import etamine.costing.CostRules;
import etamine.costing.CostSettings;
import etamine.shell.Frame;
import etamine.widgets.FormDialog;
import etamine.widgets.FormPane;
import etamine.widgets.MoneyField;
import etamine.widgets.NumberField;
import etamine.widgets.Spoken;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/** How this kitchen reckons costs: which price is asked first, the target, endings of menu prices, hands-on work. */
final class RulesDialog {
    private final Frame frame;
    private final CostingParts parts;
    private final List<CostSettings.Source> order;
    private Optional<Fields> fields = Optional.empty();

    private record Fields(NumberField target, Text endings, Button labour, MoneyField rate, Text stations) {}

    RulesDialog(Frame frame, CostingParts parts) {
        this.frame = frame;
        this.parts = parts;
        this.order = new ArrayList<>(parts.settings().sources());
    }

    void ask() {
        new FormDialog(frame.window(), "How costs are reckoned", this::build)
                .button("Save")
                .check(() -> fields.flatMap(filled -> RulesText.problem(
                        filled.endings().getText(), filled.stations().getText())))
                .onAccept(this::save)
                .ask();
    }

    private void build(FormPane form) {
        CostRules rules = parts.settings().rules();
        form.heading("Which price is asked first");
        form.wide(this::sources);
        form.heading("Menu prices");
        NumberField target =
                form.number("Food cost should not exceed, %", "field:target", p -> new NumberField(p, "0", "100", 2));
        target.set(rules.targetFoodCostPercent());
        Text endings = form.text("Prices end in, such as 0.50 0.95", "field:endings");
        endings.setText(RulesText.endings(rules));
        form.heading("Hands-on work");
        Button labour = form.check("Cost the hands-on time of steps", "field:labour");
        labour.setSelection(rules.labour().on());
        MoneyField rate = form.money(
                "An hour costs", "field:rate", parts.kitchen().house().currency());
        rate.set(rules.labour().perHour().map(parts.kitchen().house()::money));
        Text stations = form.area("Stations with another rate, one a line, such as sauce 16.50", "field:stations", 3);
        stations.setText(RulesText.stations(rules));
        fields = Optional.of(new Fields(target, endings, labour, rate, stations));
    }

    private Composite sources(Composite parent) {
        Composite box = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        box.setLayout(layout);
        org.eclipse.swt.widgets.List list =
                Spoken.id(new org.eclipse.swt.widgets.List(box, SWT.BORDER | SWT.SINGLE), "list:sources");
        Spoken.name(list, "Price sources in the order they are asked");
        list.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 1, 2));
        fill(list, 0);
        move(box, list, "Earlier", "action:earlier", -1);
        move(box, list, "Later", "action:later", 1);
        return box;
    }

    private void move(Composite box, org.eclipse.swt.widgets.List list, String label, String id, int by) {
        Button button = Spoken.id(new Button(box, SWT.PUSH), id);
        button.setText(label);
        button.setLayoutData(new GridData(SWT.FILL, SWT.TOP, false, false));
        button.addListener(SWT.Selection, event -> {
            int at = list.getSelectionIndex();
            if (at >= 0 && at + by >= 0 && at + by < order.size()) {
                Collections.swap(order, at, at + by);
                fill(list, at + by);
            }
        });
    }

    private void fill(org.eclipse.swt.widgets.List list, int selected) {
        list.setItems(order.stream().map(CostSettings.Source::label).toArray(String[]::new));
        list.select(selected);
    }

    private void save() {
        fields.ifPresent(filled -> {
            CostRules before = parts.settings().rules();
            CostRules rules = new CostRules(
                    order(before),
                    new CostRules.Labour(
                            filled.labour().getSelection(),
                            filled.rate().value().map(etamine.measures.Money::amount),
                            RulesText.readStations(filled.stations().getText())),
                    filled.target().value(),
                    RulesText.readEndings(filled.endings().getText()));
            frame.work(
                    "Saving how costs are reckoned",
                    progress -> {
                        parts.settings().change(rules);
                        return rules;
                    },
                    done -> frame.say("Saved. Every cost is reckoned that way now; undo takes it back."));
        });
    }

    /** The order as it stands; sources that are not there now keep their place at the end. */
    private List<String> order(CostRules before) {
        List<String> ids =
                new ArrayList<>(order.stream().map(CostSettings.Source::id).toList());
        boolean untouched = before.prices().isEmpty()
                && ids.equals(parts.settings().sources().stream()
                        .map(CostSettings.Source::id)
                        .toList());
        before.prices().stream().filter(id -> !ids.contains(id)).forEach(ids::add);
        return untouched ? List.of() : ids;
    }
}
