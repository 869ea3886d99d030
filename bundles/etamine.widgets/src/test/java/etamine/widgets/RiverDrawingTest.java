package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.flow.FlowPlan;
import etamine.testing.DisplayRule;
import etamine.widgets.RiverDrawing.Pool;
import etamine.widgets.RiverDrawing.Role;
import etamine.widgets.RiverDrawing.Stream;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class RiverDrawingTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private static final List<Pool> POOLS = List.of(
            new Pool("cream", 0, 260, Role.SOURCE, "Cream", "260 g"),
            new Pool("root", 0, 1_000, Role.SOURCE, "Celeriac of the large and knobbly kind", "1 kg"),
            new Pool("trim", 1, 260, Role.LOSS, "Celeriac, trimmed away", "260 g"),
            new Pool("puree", 1, 1_000, Role.WORK, "Purée", "1 kg"),
            new Pool("plate", 2, 1_000, Role.GOAL, "Plate", "1 kg"));
    private static final List<Stream> STREAMS = List.of(
            new Stream("root", "puree", 740),
            new Stream("root", "trim", 260),
            new Stream("cream", "puree", 260),
            new Stream("puree", "plate", 1_000));

    private final List<String> told = new ArrayList<>();

    private RiverDrawing river(Shell shell) {
        shell.setLayout(new FillLayout());
        RiverDrawing river = RiverDrawing.in(shell).onPick(told::add);
        shell.layout();
        river.show("The river", POOLS, STREAMS);
        DISPLAY.settle();
        return river;
    }

    @Test
    void followsTheThickestRibbonWithTheArrows() {
        RiverDrawing river = river(DISPLAY.shell(900, 500));
        river.pick("root");
        DISPLAY.key(river, SWT.ARROW_RIGHT, '\0', 0);
        DISPLAY.key(river, SWT.ARROW_RIGHT, '\0', 0);
        DISPLAY.key(river, SWT.ARROW_LEFT, '\0', 0);
        DISPLAY.key(river, SWT.ARROW_DOWN, '\0', 0);
        assertThat(told).containsExactly("puree", "plate", "puree", "trim");
        assertThat(river.description()).isEqualTo("Celeriac, trimmed away, 260 g");
    }

    @Test
    void saysAllOfItWhenNothingIsPicked() {
        assertThat(river(DISPLAY.shell(900, 500)).description())
                .startsWith("The river. Cream, 260 g; ")
                .endsWith("Plate, 1 kg");
    }

    @Test
    void growsAndScrollsWhenTheTypeIsThreeTimesAsLarge() {
        Shell shell = DISPLAY.shell(500, 260);
        RiverDrawing river = river(shell);
        FontData data = shell.getFont().getFontData()[0];
        Font large = new Font(shell.getDisplay(), data.getName(), data.getHeight() * 3, SWT.NORMAL);
        try {
            river.setFont(large);
            river.show("The river", POOLS, STREAMS);
            DISPLAY.settle();
            FlowPlan plan = river.plan().orElseThrow();
            ScrolledComposite scroller = (ScrolledComposite) river.control();
            assertThat(plan.width()).isGreaterThan(500);
            assertThat(scroller.getMinWidth()).isGreaterThanOrEqualTo(plan.width());
            for (FlowPlan.Place place : plan.places()) {
                Rectangle box = river.places().get(place.id());
                assertThat(box.x + box.width).isLessThanOrEqualTo(scroller.getMinWidth());
            }
        } finally {
            river.setFont(null);
            large.dispose();
        }
    }

    @Test
    void saysThatItIsTooDeepRatherThanDrawIt() {
        Shell shell = DISPLAY.shell(900, 500);
        RiverDrawing river = river(shell);
        List<Pool> pools = new ArrayList<>();
        List<Stream> streams = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            pools.add(new Pool("p" + i, i, 1, Role.WORK, "Step " + i, "1 g"));
            if (i > 0) {
                streams.add(new Stream("p" + (i - 1), "p" + i, 1));
            }
        }
        river.show("Deep", pools, streams);
        DISPLAY.settle();
        assertThat(river.plan()).isEmpty();
        assertThat(river.description()).contains("Step 199");
    }
}
