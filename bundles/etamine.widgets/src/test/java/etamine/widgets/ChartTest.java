package etamine.widgets;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.testing.DisplayRule;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class ChartTest {
    @RegisterExtension
    static final DisplayRule DISPLAY = new DisplayRule();

    private static final int WIDTH = 600;
    private static final int HEIGHT = 400;
    private static final ScatterPlot.Kind STAR = new ScatterPlot.Kind("Star", PlotShape.CIRCLE, 0);
    private static final ScatterPlot.Kind DOG = new ScatterPlot.Kind("Dog", PlotShape.DIAMOND, 3);

    @Test
    void picksTheNextPointInTheDirectionOfTheArrow() {
        ScatterPlot plot = plot();
        List<String> told = new ArrayList<>();
        plot.onPick(told::add);
        draw(plot);
        plot.pick("low");
        DISPLAY.key(plot, SWT.ARROW_UP, '\0', 0);
        DISPLAY.key(plot, SWT.ARROW_LEFT, '\0', 0);
        DISPLAY.key(plot, SWT.ARROW_LEFT, '\0', 0);
        assertThat(told).containsExactly("high", "left");
        assertThat(plot.picked()).contains("left");
        assertThat(plot.description()).isEqualTo("Cod, Dog: 2 sold");
    }

    @Test
    void forgetsAPickedPointThatIsGone() {
        ScatterPlot plot = plot();
        draw(plot);
        plot.pick("low");
        plot.show(new ScatterPlot.Plot("a", "b", List.of(), Optional.empty(), Optional.empty(), List.of()));
        assertThat(plot.picked()).isEmpty();
    }

    @Test
    void drawsPointsInTheirColoursAndSaysThemInWords() {
        ScatterPlot plot = plot();
        ImageData data = draw(plot);
        Palette palette = Palette.of(plot);
        assertThat(count(data, palette.series(0).getRGB())).isGreaterThan(100);
        assertThat(count(data, palette.series(3).getRGB())).isGreaterThan(50);
        assertThat(plot.description()).contains("Fowl, Star: 9 sold").contains("Cod, Dog: 2 sold");
    }

    @Test
    void goesFromValueToValueOfALineAndReadsIt() {
        TimeChart chart = new TimeChart(DISPLAY.shell(WIDTH, HEIGHT));
        List<String> told = new ArrayList<>();
        chart.onPick(told::add).show(prices());
        draw(chart);
        DISPLAY.key(chart, SWT.ARROW_RIGHT, '\0', 0);
        DISPLAY.key(chart, SWT.ARROW_RIGHT, '\0', 0);
        DISPLAY.key(chart, SWT.ARROW_RIGHT, '\0', 0);
        assertThat(told).containsExactly("one", "two", "two");
        assertThat(chart.description()).isEqualTo("4.60 on 8 Nov");
    }

    @Test
    void putsLaterValuesFurtherRightAndHigherOnesFurtherUp() {
        TimeChart chart = new TimeChart(DISPLAY.shell(WIDTH, HEIGHT));
        chart.show(prices());
        draw(chart);
        Rectangle first = chart.places().get("one");
        Rectangle second = chart.places().get("two");
        assertThat(second.x).isGreaterThan(first.x + WIDTH / 2);
        assertThat(second.y).isLessThan(first.y);
    }

    @Test
    void drawsEffectsAsLongAsTheyAre() {
        ChangeBars bars = new ChangeBars(DISPLAY.shell(WIDTH, HEIGHT));
        bars.show(List.of(
                new ChangeBars.Row("Before", 10, "10.00", true),
                new ChangeBars.Row("Price", 2, "+2.00", false),
                new ChangeBars.Row("Yield", -1, "\u22121.00", false),
                new ChangeBars.Row("After", 11, "11.00", true)));
        ImageData data = draw(bars);
        Palette palette = Palette.of(bars);
        double up = count(data, palette.fill(Tone.BAD).getRGB());
        double down = count(data, palette.fill(Tone.GOOD).getRGB());
        assertThat(up / down).isBetween(1.8, 2.2);
        assertThat(bars.description()).isEqualTo("Before: 10.00; Price: +2.00; Yield: \u22121.00; After: 11.00");
    }

    @Test
    void movesTheSliderWithTheEntryAndBack() {
        Shell shell = DISPLAY.shell(WIDTH, HEIGHT);
        List<BigDecimal> told = new ArrayList<>();
        SliderRow row = new SliderRow(shell, "field:cream", p -> new NumberField(p, "-100", "1000", 2))
                .named("Cream", "%")
                .range(SliderRow.Range.of("-50", "100", "1", "0"))
                .onChange(told::add);
        Scale slider = DISPLAY.find(shell, "field:cream:slider", Scale.class);
        assertThat(slider.getSelection()).isEqualTo(50);
        slider.setSelection(64);
        DISPLAY.select(slider);
        assertThat(row.value()).isEqualByComparingTo("14");
        row.field().setText("14.5");
        assertThat(row.value()).isEqualByComparingTo("14.5");
        assertThat(slider.getSelection()).isEqualTo(65);
        DISPLAY.select(DISPLAY.find(shell, "field:cream:reset", Button.class));
        assertThat(told)
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(new BigDecimal(14), new BigDecimal("14.5"), BigDecimal.ZERO);
        assertThat(row.isMoved()).isFalse();
    }

    @Test
    void takesTypedNumbersBeyondTheSlider() {
        Shell shell = DISPLAY.shell(WIDTH, HEIGHT);
        SliderRow row = new SliderRow(shell, "field:cream", p -> new NumberField(p, "-100", "1000", 2))
                .range(SliderRow.Range.of("-50", "100", "1", "0"));
        row.field().setText("250");
        assertThat(row.value()).isEqualByComparingTo("250");
        row.field().setText("much");
        assertThat(row.value()).isEqualByComparingTo("250");
    }

    private static ScatterPlot plot() {
        ScatterPlot plot = new ScatterPlot(DISPLAY.shell(WIDTH, HEIGHT));
        plot.show(new ScatterPlot.Plot(
                "Share",
                "Contribution",
                List.of(
                        new ScatterPlot.Dot("high", "Fowl", 9, 12, STAR, "9 sold"),
                        new ScatterPlot.Dot("low", "Tart", 9, 4, DOG, "9 sold"),
                        new ScatterPlot.Dot("left", "Cod", 2, 11, DOG, "2 sold")),
                Optional.of(new ScatterPlot.Cut(5, "5 %")),
                Optional.of(new ScatterPlot.Cut(8, "8.00")),
                List.of(STAR, DOG)));
        return plot;
    }

    private static TimeChart.Chart prices() {
        TimeChart.Line line = new TimeChart.Line(
                "Cream",
                List.of(
                        new TimeChart.Spot("one", LocalDate.of(2026, 11, 1), 4.1, "4.10 on 1 Nov"),
                        new TimeChart.Spot("two", LocalDate.of(2026, 11, 8), 4.6, "4.60 on 8 Nov")),
                true);
        return new TimeChart.Chart("EUR per l", List.of(line), Optional.empty());
    }

    private static ImageData draw(Drawing drawing) {
        Image image = new Image(DISPLAY.display(), WIDTH, HEIGHT);
        GC gc = new GC(image);
        try {
            gc.setBackground(Palette.of(drawing).paper());
            gc.fillRectangle(0, 0, WIDTH, HEIGHT);
            drawing.draw(gc, new Rectangle(0, 0, WIDTH, HEIGHT), Palette.of(drawing));
            return image.getImageData(100);
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    private static int count(ImageData data, RGB wanted) {
        int found = 0;
        for (int y = 0; y < data.height; y++) {
            for (int x = 0; x < data.width; x++) {
                RGB is = data.palette.getRGB(data.getPixel(x, y));
                boolean near = Math.abs(is.red - wanted.red)
                                + Math.abs(is.green - wanted.green)
                                + Math.abs(is.blue - wanted.blue)
                        < 30;
                found += near ? 1 : 0;
            }
        }
        return found;
    }
}
