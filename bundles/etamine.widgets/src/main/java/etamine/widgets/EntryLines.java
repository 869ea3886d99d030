package etamine.widgets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Slider;

/**
 * Lines typed the way people write them, one native field each, with an empty one at the end. Only the lines in view
 * have fields, so that ten thousand are as quick as ten. Enter saves and goes on, Shift+Enter makes room for a line below,
 * Alt with the arrows moves a line, F7 switches its mark. A line that was not understood stays as typed over a sentence;
 * Alt with 1 to 3 takes a line that is offered instead, Ctrl+Enter what the sentence proposes to add.
 */
public final class EntryLines extends Composite {
    /** Lines in view at once. */
    static final int VIEW = 24;

    private final String id;
    private final List<String> figures;
    private final Acts acts;
    private final Slider slider;
    private final List<EntryLine> places = new ArrayList<>();
    private IntFunction<Line> lines = row -> Line.BLANK;
    private String subject = "";
    private int count;
    private int top;

    /**
     * One line as shown.
     *
     * @param text as typed
     * @param mark on its switch, such as {@code EP}; empty for none
     * @param figures what stands behind it
     * @param trouble why it was not understood
     */
    public record Line(String text, String mark, List<String> figures, Optional<Trouble> trouble) {
        static final Line BLANK = new Line("", "", List.of(), Optional.empty());

        /** Copies the list. */
        public Line {
            figures = List.copyOf(figures);
        }
    }

    /**
     * Why a line was not understood.
     *
     * @param sentence what to do
     * @param offers whole lines that may be meant
     * @param add what can be added so that it is understood, such as {@code Add “samphire” as a new ingredient}; or empty
     * @param from where the part begins that was not understood
     * @param to where it ends; no part when it is not after the beginning
     */
    public record Trouble(String sentence, List<String> offers, String add, int from, int to) {
        /** Copies the list. */
        public Trouble {
            offers = List.copyOf(offers);
        }
    }

    /** What happens to lines; called on the window's thread. Each shows the lines anew, now or soon. */
    public interface Acts {
        /** Ways to complete what is typed. */
        List<String> complete(String typed);

        /** Saves a line that was edited, removes it when it is empty; answers whether it was understood. */
        boolean save(String about, int row, String text);

        /** Puts several lines in place of a row. */
        void paste(int row, String lines);

        /** Makes room for an empty line at a place. */
        void open(int row);

        /** Moves a line up (-1) or down (1); answers whether it went. */
        boolean move(int row, int by);

        /** Switches a line's mark. */
        void mark(int row);

        /** Adds what a line's trouble proposes. */
        void add(int row);

        /** The keyboard is in a line now. */
        void entered(int row);
    }

    /**
     * No lines but the empty one.
     *
     * @param heading above the lines
     * @param figures headings of the figures behind them
     */
    public EntryLines(Composite parent, String id, String heading, List<String> figures, Acts acts) {
        super(parent, SWT.NONE);
        this.id = id;
        this.figures = List.copyOf(figures);
        this.acts = acts;
        slider = new Slider(this, SWT.VERTICAL);
        slider.setVisible(false);
        slider.addListener(SWT.Selection, event -> scroll(slider.getSelection()));
        setLayout(new EntryLinesLayout(figures.size()));
        heading(heading, SWT.NONE);
        heading("", SWT.NONE);
        figures.forEach(figure -> heading(figure, SWT.RIGHT));
        heading("", SWT.NONE);
        addListener(SWT.MouseVerticalWheel, this::wheel);
        fill();
    }

    /**
     * Shows lines about some subject, asking only for those in view; a line being typed about the same subject stays.
     *
     * @param about what they are about
     * @param lineCount how many there are
     * @param line each of them
     */
    public void show(String about, int lineCount, IntFunction<Line> line) {
        if (!about.equals(subject)) {
            leave();
            top = 0;
            places.forEach(EntryLine::forget);
        }
        subject = about;
        count = lineCount;
        lines = line;
        fill();
    }

    /** The line the keyboard is in. */
    public OptionalInt focusedRow() {
        return IntStream.range(0, places.size())
                .filter(place -> places.get(place).isFocused())
                .map(place -> top + place)
                .findFirst();
    }

    /** Puts the keyboard in a line, scrolling to it; answers whether there is one. */
    public boolean focusRow(int row) {
        if (row < 0 || row > count) {
            return false;
        }
        if (row < top || row >= top + VIEW) {
            scroll(row < top ? row : row - VIEW + 1);
        }
        return places.get(row - top).focus();
    }

    /** Saves what is typed. */
    public void leave() {
        places.forEach(EntryLine::leave);
    }

    @Override
    public boolean setFocus() {
        return focusRow(Math.min(count, top));
    }

    Acts acts() {
        return acts;
    }

    String subject() {
        return subject;
    }

    int figureCount() {
        return figures.size();
    }

    String cellId(int place, String part) {
        return id + ":" + place + (part.isEmpty() ? "" : ":" + part);
    }

    int row(EntryLine line) {
        return top + places.indexOf(line);
    }

    Line line(int row) {
        return row < count ? lines.apply(row) : Line.BLANK;
    }

    void scroll(int wanted) {
        int first = Math.max(0, Math.min(wanted, count + 1 - VIEW));
        if (first != top) {
            leave();
            places.forEach(EntryLine::forget);
            top = first;
            fill();
        }
    }

    void wheel(Event event) {
        if (slider.getVisible()) {
            scroll(top - Integer.signum(event.count) * 3);
            event.doit = false;
        }
    }

    private void fill() {
        int inView = Math.min(count + 1, VIEW);
        top = Math.max(0, Math.min(top, count + 1 - inView));
        setRedraw(false);
        while (places.size() > inView) {
            places.remove(places.size() - 1).dispose();
        }
        while (places.size() < inView) {
            places.add(new EntryLine(this, places.size()));
        }
        for (int place = 0; place < inView; place++) {
            places.get(place).show(line(top + place));
        }
        boolean scrolls = count + 1 > VIEW;
        slider.setVisible(scrolls);
        if (scrolls) {
            slider.setValues(top, 0, count + 1, VIEW, 1, VIEW - 1);
        }
        setRedraw(true);
        layout();
        FormPane.reflow(this);
    }

    private void heading(String text, int style) {
        Label label = new Label(this, style);
        label.setText(text);
        label.setFont(Fonts.small(this));
        label.setForeground(Palette.of(this).quiet());
    }
}
