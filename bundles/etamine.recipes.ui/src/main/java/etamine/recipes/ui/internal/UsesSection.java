package etamine.recipes.ui.internal;

import etamine.kitchen.cost.RecipeCost;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Change;
import etamine.recipes.UseLines;
import etamine.widgets.EntryLines;
import etamine.widgets.FormPane;
import etamine.widgets.Prompt;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.eclipse.swt.widgets.Label;

/** What a recipe takes: lines as people write them. */
final class UsesSection implements EntryLines.Acts {
    private final Desk desk;
    private final LineText text;
    private final Map<String, LineSheet> sheets = new HashMap<>();
    private final EntryLines lines;
    private final Label report;
    private final FormPane form;
    private String shown = "";

    UsesSection(FormPane form, Desk desk) {
        this.form = form;
        this.desk = desk;
        this.text = new LineText(desk.model(), desk.ware().lines());
        form.heading("Uses");
        report = form.remark("");
        lines = form.wide(cell -> new EntryLines(
                cell, "lines:uses", "amount, item, preparation; paste a whole list", List.of("AP", "cost"), this));
    }

    void show(Recipe recipe) {
        if (!shown.equals(recipe.id())) {
            lines.leave();
            say("");
        }
        shown = recipe.id();
        sheet().follow(recipe.uses());
        show();
    }

    private LineSheet sheet() {
        return sheets.computeIfAbsent(shown, id -> new LineSheet(desk.model().lines(id)));
    }

    private void show() {
        LineSheet sheet = sheet();
        List<LineSheet.Entry> entries = sheet.entries();
        Optional<RecipeCost> cost = desk.model().cost(shown);
        lines.show(shown, entries.size(), row -> text.of(entries.get(row), sheet.use(row), cost));
    }

    /** The line of the recipe that the keyboard is in. */
    OptionalInt line() {
        OptionalInt row = lines.focusedRow();
        Optional<Integer> use = row.isPresent() ? sheet().use(row.getAsInt()) : Optional.empty();
        return use.map(OptionalInt::of).orElseGet(OptionalInt::empty);
    }

    void focusEnd() {
        lines.focusRow(sheet().entries().size());
    }

    void focusUse(int use) {
        lines.focusRow(sheet().row(use));
    }

    private void save() {
        show();
        String id = shown;
        LineSheet sheet = sheet();
        sheet.begin();
        desk.frame().work("Saving", progress -> saved(id, sheet), change -> {
            if (change instanceof Change.Refused refused) {
                desk.model().find(id).ifPresent(now -> sheet.refused(now.uses(), RecipesModel.sentences(refused)));
            }
            desk.changed().accept(change);
        });
    }

    private Change saved(String id, LineSheet sheet) {
        try {
            return desk.model().save(id, recipe -> recipe.withUses(sheet.uses()));
        } finally {
            sheet.end();
        }
    }

    /** What was said of a pasted list no longer holds once all of it is understood. */
    private void forgetReport() {
        if (sheet().unclear() == 0) {
            say("");
        }
    }

    private void say(String sentence) {
        form.say(report, sentence);
    }

    @Override
    public List<String> complete(String typed) {
        return desk.model().complete(shown, typed);
    }

    @Override
    public boolean save(String about, int row, String typed) {
        if (!about.equals(shown)) {
            return true;
        }
        List<LineSheet.Entry> before = sheet().entries();
        boolean understood = sheet().type(row, typed);
        forgetReport();
        if (before.equals(sheet().entries())) {
            show();
        } else {
            save();
        }
        return understood;
    }

    @Override
    public void paste(int row, String pasted) {
        String about = shown;
        desk.frame()
                .work(
                        "Reading the pasted list",
                        progress -> desk.model().lines(about).readAll(pasted),
                        read -> {
                            if (about.equals(shown)) {
                                pasted(row, read);
                            }
                        });
    }

    private void pasted(int row, List<UseLines.Pasted> read) {
        LineSheet sheet = sheet();
        long before = sheet.unclear();
        sheet.insert(row, read);
        long unclear = sheet.unclear() - before;
        int next = sheet.unclearFrom(row);
        long headings = read.stream().filter(line -> line.reading().isEmpty()).count();
        say(PasteReport.of(read.size() - headings, unclear, headings));
        save();
        lines.focusRow(unclear > 0 ? next : sheet.entries().size());
    }

    @Override
    public void open(int row) {
        sheet().open(row);
        show();
    }

    @Override
    public boolean move(int row, int by) {
        boolean went = sheet().move(row, by);
        if (went) {
            save();
        }
        return went;
    }

    @Override
    public void mark(int row) {
        if (sheet().switchBasis(row)) {
            save();
        }
    }

    @Override
    public void add(int row) {
        List<LineSheet.Entry> entries = sheet().entries();
        Optional<Unweighed> unweighed = sheet().use(row)
                .flatMap(use -> desk.model().unweighed(sheet().uses().get(use)));
        if (unweighed.isPresent()) {
            weigh(row, unweighed.get());
        } else if (row < entries.size() && entries.get(row) instanceof LineSheet.Entry.Unclear unclear) {
            Missing.of(unclear.text(), unclear.reading(), desk.model().words())
                    .ifPresent(missing -> add(row, unclear.text(), missing));
        }
    }

    private void weigh(int row, Unweighed missing) {
        Prompt.line(
                        desk.frame().window(),
                        "Add a measure",
                        "1 " + missing.unit() + " of " + missing.named() + " weighs",
                        "",
                        missing::problem)
                .ifPresent(typed -> start(
                        "Adding a measure of " + missing.named(),
                        () -> desk.model().weigh(missing, missing.measure(typed)),
                        () -> {
                            show();
                            lines.focusRow(row + 1);
                        }));
    }

    private void add(int row, String typed, Missing missing) {
        if (!desk.model().canStart()) {
            desk.model().unlisted(missing).ifPresent(use -> {
                sheet().put(row, use);
                save();
            });
            return;
        }
        new AddItem(desk.frame().window(), NewItem.of(missing))
                .ask()
                .ifPresent(filled ->
                        start("Adding " + missing.name(), () -> desk.model().start(filled), () -> {
                            sheet().reread(row, desk.model().renamed(typed, filled));
                            forgetReport();
                            save();
                            lines.focusRow(row + 1);
                        }));
    }

    private void start(String label, Supplier<String> work, Runnable then) {
        desk.frame().work(label, progress -> work.get(), id -> then.run());
    }

    @Override
    public void entered(int row) {
        Optional<Recipe> recipe = desk.model().find(shown);
        Optional<Integer> use = sheet().use(row);
        if (recipe.isPresent()
                && use.isPresent()
                && use.get() < recipe.get().uses().size()) {
            desk.frame().explain(desk.story().line(recipe.get(), use.get()));
        }
    }
}
