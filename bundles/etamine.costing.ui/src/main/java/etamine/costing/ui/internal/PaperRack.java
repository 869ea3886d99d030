package etamine.costing.ui.internal;

import etamine.costing.CostPaper;
import etamine.costing.CostPapers;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.FilePick;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** Puts pages of costing on paper: a menu that saves or prints each. */
final class PaperRack {
    private static final List<FilePick.Kind> KINDS = List.of(
            new FilePick.Kind("PDF", "pdf"),
            new FilePick.Kind("Spreadsheet", "xlsx"),
            new FilePick.Kind("Table as text", "csv"),
            new FilePick.Kind("Web page", "html"));
    private static final String MISSING =
            "Papers need the module that lays them out. Start it under Modules: its name is etamine.documents.";
    private final Frame frame;
    private final CostingParts parts;

    PaperRack(Frame frame, CostingParts parts) {
        this.frame = frame;
        this.parts = parts;
    }

    /**
     * Something that can be put on paper.
     *
     * @param name what it is called
     * @param make lays it out; called in the background
     */
    record Sheet(String name, Function<CostPapers, CostPaper> make) {}

    /** The papers about one plate and all of them. */
    List<Sheet> ofPlate(Optional<String> recipe) {
        List<Sheet> sheets = new ArrayList<>();
        recipe.ifPresent(id ->
                sheets.add(new Sheet("costing sheet of " + parts.recipeName(id), papers -> papers.costingSheet(id))));
        sheets.add(new Sheet("price list", CostPapers::priceList));
        return sheets;
    }

    /** The action that offers these. */
    BenchAction action(Supplier<List<Sheet>> sheets) {
        return BenchAction.of("papers", "Save or print", "print", () -> offer(sheets.get()))
                .onKey(SWT.MOD1 | 'P');
    }

    private void offer(List<Sheet> sheets) {
        Optional<CostPapers> papers = parts.papers().get();
        if (papers.isEmpty()) {
            frame.warn(MISSING);
            return;
        }
        Menu menu = new Menu(frame.window(), SWT.POP_UP);
        for (Sheet sheet : sheets) {
            item(menu, "Save the " + sheet.name() + "\u2026", () -> save(papers.get(), sheet));
            item(menu, "Print the " + sheet.name(), () -> print(papers.get(), sheet));
        }
        menu.addListener(
                SWT.Hide,
                event -> event.display.asyncExec(() -> {
                    if (!menu.isDisposed()) {
                        menu.dispose();
                    }
                }));
        menu.setVisible(true);
    }

    private static void item(Menu menu, String label, Runnable run) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(label.replace("&", "&&"));
        item.addListener(SWT.Selection, event -> run.run());
    }

    private void save(CostPapers papers, Sheet sheet) {
        FilePick.save(frame.window(), "Save the " + sheet.name(), sheet.name(), KINDS)
                .ifPresent(file -> frame.work(
                        "Saving the " + sheet.name(),
                        progress -> written(papers, sheet, file),
                        saved -> frame.say("The " + sheet.name() + " was saved to " + saved + ".")));
    }

    private static Path written(CostPapers papers, Sheet sheet, Path file) throws java.io.IOException {
        sheet.make().apply(papers).write(file);
        return file;
    }

    private void print(CostPapers papers, Sheet sheet) {
        frame.work(
                "Laying out the " + sheet.name(),
                progress -> sheet.make().apply(papers).printout(),
                frame::print);
    }
}
