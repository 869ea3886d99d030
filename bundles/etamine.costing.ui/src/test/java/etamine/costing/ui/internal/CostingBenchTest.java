package etamine.costing.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Explanation;
import etamine.base.Printout;
import etamine.base.Progress;
import etamine.base.Subject;
import etamine.shell.BenchAction;
import etamine.shell.Frame;
import etamine.testing.DisplayRule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class CostingBenchTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private final SetParts desk = new SetParts();
    private final List<String> warned = new ArrayList<>();
    private final List<Explanation> explained = new ArrayList<>();
    private Shell shell;
    private CostingBench bench;

    @BeforeEach
    void open() {
        shell = DISPLAY.shell(1100, 760);
        bench = new CostingBench(shell, frame(), desk.parts());
        shell.open();
        DISPLAY.settle();
    }

    @Test
    void explainsAPlateThatIsSelected() {
        bench.show(new Subject("cost", "soup"));
        DISPLAY.settle();
        assertThat(DISPLAY.find(shell, "plate:title", Label.class).getText()).isEqualTo("Soup: 1.00\u00a0EUR");
        assertThat(DISPLAY.find(shell, "plate:why", Label.class).getText()).contains("The least of 2.");
        assertThat(explained).last().extracting(Explanation::title).isEqualTo("soup");
    }

    @Test
    void worksOutAPriceAndWritesItOnlyWhenAsked() {
        bench.show(new Subject("cost", "tart"));
        press("action:show-price");
        assertThat(DISPLAY.find(shell, "price:answer", Label.class).getText()).isEqualTo("11.50\u00a0EUR");
        assertThat(desk.accepted).isEmpty();
        press("action:write-price");
        assertThat(desk.accepted).hasSize(1);
        assertThat(desk.accepted.get(0).menuPrices()).containsKey("tart");
    }

    @Test
    void offersToWriteNoPriceForACostThatIsNotThePlates() {
        bench.show(new Subject("cost", "tart"));
        press("action:show-price");
        DISPLAY.find(shell, "field:price-cost", Text.class).setText("4.20");
        DISPLAY.settle();
        assertThat(DISPLAY.find(shell, "action:write-price", Button.class).getEnabled())
                .isFalse();
    }

    @Test
    void followsASliderThroughTheWholeMenuAndLeavesTheBookAlone() {
        press("page:what-if");
        Text choice = DISPLAY.find(shell, "field:try", Text.class);
        choice.setText("Cream: price");
        choice.notifyListeners(SWT.DefaultSelection, new Event());
        DISPLAY.settle();
        Scale slider = DISPLAY.find(shell, "lever:price/cream:slider", Scale.class);
        slider.setSelection(64);
        DISPLAY.select(slider);
        Table plates = DISPLAY.find(shell, "table:trial", Table.class);
        assertThat(DISPLAY.find(shell, "lever:price/cream", Text.class).getText())
                .isEqualTo("14");
        assertThat(plates.getItem(0).getText(1)).isEqualTo("2.00 \u2192 2.30");
        assertThat(DISPLAY.find(shell, "what-if:sentence", Label.class).getText())
                .startsWith("1 plate moves");
        assertThat(desk.accepted).isEmpty();
        run("discard");
        assertThat(plates.getItem(0).getText(1)).doesNotContain("\u2192");
        assertThat(desk.accepted).isEmpty();
    }

    @Test
    void putsOutAPlatesLeversFromThePlatesPage() {
        bench.show(new Subject("cost", "tart"));
        run("try");
        assertThat(DISPLAY.has(shell, "lever:menu/tart")).isTrue();
        assertThat(DISPLAY.has(shell, "lever:line/0/tart")).isTrue();
    }

    @Test
    void opensEveryPageOfABookWithNothingToShow() {
        for (String page : List.of("changes", "menu", "statement", "butcher")) {
            press("page:" + page);
            bench.refresh();
            DISPLAY.settle();
        }
        assertThat(DISPLAY.find(shell, "changes:sentence", Label.class).getText())
                .startsWith("No price and no recipe has changed");
        assertThat(DISPLAY.find(shell, "menu:notes", Label.class).getText()).contains("An average hides its parts");
        assertThat(warned).isEmpty();
    }

    @Test
    void saysWhatPapersNeedWhenTheirModuleIsNotThere() {
        run("papers");
        assertThat(warned).singleElement().asString().contains("etamine.documents");
    }

    private void press(String id) {
        DISPLAY.select(DISPLAY.find(shell, id, Button.class));
    }

    private void run(String action) {
        bench.actions().stream()
                .filter(each -> each.id().equals(action))
                .findFirst()
                .map(BenchAction::run)
                .orElseThrow()
                .run();
        DISPLAY.settle();
    }

    private Frame frame() {
        return new Frame() {
            @Override
            public LocalDate day() {
                return LocalDate.of(2026, 11, 24);
            }

            @Override
            public void explain(Explanation explanation) {
                explained.add(explanation);
            }

            @Override
            public void explainNothing() {
                explained.clear();
            }

            @Override
            public void go(Subject subject) {
                bench.show(subject);
            }

            @Override
            public <T> void work(String label, Job<T> job, Consumer<T> then) {
                try {
                    then.accept(job.run(Progress.unseen()));
                } catch (Exception problem) {
                    warned.add(String.valueOf(problem.getMessage()));
                }
            }

            @Override
            public void print(Printout printout) {
                warned.add("printed " + printout.title());
            }

            @Override
            public void save(Printout printout) {
                warned.add("saved " + printout.title());
            }

            @Override
            public void say(String text) {}

            @Override
            public void warn(String text) {
                warned.add(text);
            }

            @Override
            public void actionsChanged() {}

            @Override
            public Shell window() {
                return shell;
            }
        };
    }
}
