package etamine.costing.ui.internal;

import etamine.base.Subject;
import etamine.shell.Bench;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.widgets.Pages;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.eclipse.swt.widgets.Composite;

/** The pages of costing, one at a time. A page that is not shown reads the book again when it comes up. */
final class CostingBench implements Bench {
    private static final String PLATES = "plates";
    private static final String WHAT_IF = "what-if";
    private static final String CHANGES = "changes";
    private final Frame frame;
    private final CostingParts parts;
    private final Pages pages;
    private final PaperRack papers;
    private final Map<String, CostPage> built = new HashMap<>();
    private final Set<String> stale = new HashSet<>();

    CostingBench(Composite parent, Frame frame, CostingParts parts) {
        this.frame = frame;
        this.parts = parts;
        papers = new PaperRack(frame, parts);
        pages = new Pages(parent);
        pages.onShow(this::shown);
        page(PLATES, "Plates", stage -> new PlatesPage(stage, frame, parts, this::tryOut));
        page(WHAT_IF, "What if", stage -> new WhatIfPage(stage, frame, new WhatIfModel(parts)));
        page(CHANGES, "What changed", stage -> new ChangesPage(stage, frame, new ChangesModel(parts)));
        page("menu", "Menu", stage -> new MenuPage(stage, frame, new MenuModel(parts), papers));
        page("statement", "Statement", stage -> new StatementPage(stage, frame, new StatementModel(parts), papers));
        page("butcher", "Butcher's sheet", stage -> new ButcherPage(stage, frame, new ButcherModel(parts), papers));
    }

    private void page(String id, String name, Function<Composite, CostPage> build) {
        pages.page(id, name, stage -> {
            CostPage page = build.apply(stage);
            built.put(id, page);
            stale.add(id);
            return page.control();
        });
    }

    private void shown(String id) {
        CostPage page = built.get(id);
        if (page != null) {
            frame.explainNothing();
            if (stale.remove(id)) {
                page.refresh();
            }
            page.focus();
        }
        frame.actionsChanged();
    }

    private CostPage page() {
        return built.get(pages.shown());
    }

    private void tryOut(String recipe) {
        pages.show(WHAT_IF);
        if (built.get(WHAT_IF) instanceof WhatIfPage page) {
            page.tryPlate(recipe);
        }
    }

    private void settings() {
        new RulesDialog(frame, parts).ask();
    }

    @Override
    public List<BenchAction> actions() {
        List<BenchAction> actions = new ArrayList<>(page().actions());
        if (page() instanceof PlatesPage plates) {
            actions.addAll(List.of(papers.action(() -> papers.ofPlate(plates.selectedRecipe()))));
        }
        actions.add(BenchAction.of("rules", "Cost rules", "settings", this::settings));
        return actions;
    }

    @Override
    public void refresh() {
        stale.addAll(built.keySet());
        stale.remove(pages.shown());
        page().refresh();
    }

    @Override
    public void show(Subject subject) {
        pages.show(subject.kind().equals("price") ? CHANGES : PLATES);
        page().show(subject);
    }

    @Override
    public void focus() {
        page().focus();
    }
}
