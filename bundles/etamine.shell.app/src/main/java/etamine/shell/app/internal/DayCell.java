package etamine.shell.app.internal;

import etamine.kitchen.today.DayMark;
import etamine.widgets.Fonts;
import etamine.widgets.Icons;
import etamine.widgets.Palette;
import etamine.widgets.Tone;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/** One day of the ribbon. */
final class DayCell extends etamine.widgets.Drawing {
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("EEE d", Locale.ENGLISH);
    private static final DateTimeFormatter TIGHT = DateTimeFormatter.ofPattern("EEEEE d", Locale.ENGLISH);
    private static final Pattern NUMBER = Pattern.compile("^(\\d{1,5})\\b.*");
    private static final int PAD = 7;
    private static final int TOP = 8;
    private static final int INDENT = PAD + 18;
    private static final int LINES = 3;
    private Face face = new Face(LocalDate.EPOCH, false, false, List.of(), 0);

    /** What it shows; {@code most} is the most covers of any day, against which the bar is drawn. */
    record Face(LocalDate day, boolean today, boolean picked, List<DayMark> marks, int most) {}

    /** Marks of a kind: in words, and in fewer where those have no room. */
    private record Line(String icon, String text, String brief, Tone tone) {}

    DayCell(Composite parent) {
        super(parent);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        addListener(SWT.Traverse, DayCell::leave);
        addListener(SWT.KeyDown, event -> {});
        getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_RADIOBUTTON;
            }

            @Override
            public void getState(AccessibleControlEvent event) {
                event.detail = ACC.STATE_FOCUSABLE | (face.picked() ? ACC.STATE_CHECKED : 0);
            }
        });
    }

    /** The number of covers a mark speaks of; 0 if it speaks of none. */
    static int covers(DayMark mark) {
        Matcher matcher = NUMBER.matcher(mark.text());
        return mark.kind() == DayMark.Kind.COVERS && matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
    }

    LocalDate day() {
        return face.day();
    }

    void show(Face newFace) {
        if (!newFace.equals(face)) {
            face = newFace;
            setToolTipText(description());
            redraw();
        }
    }

    @Override
    public String description() {
        String marks = face.marks().stream().map(DayMark::text).collect(Collectors.joining("\n"));
        String day = Sentences.LONG_DAY.format(face.day()) + (face.today() ? ", today" : "");
        return marks.isEmpty() ? day : day + "\n" + marks;
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        GC gc = new GC(this);
        int line = gc.getFontMetrics().getHeight() + 3;
        gc.dispose();
        return new Point(wHint == SWT.DEFAULT ? 50 : wHint, line * (LINES + 1) + 20);
    }

    @Override
    protected void draw(GC gc, Rectangle area, Palette palette) {
        if (face.picked()) {
            gc.setBackground(palette.wash());
            gc.fillRectangle(area);
            gc.setBackground(palette.accent());
            gc.fillRectangle(area.x, area.y, area.width, 3);
        }
        gc.setBackground(palette.line());
        gc.fillRectangle(area.x + area.width - 1, area.y, 1, area.height);
        int y = drawHead(gc, area, palette);
        drawLines(gc, y, area.width - PAD - INDENT, palette);
        if (isFocusControl()) {
            gc.drawFocus(area.x + 2, area.y + 4, area.width - 5, area.height - 6);
        }
    }

    private void drawLines(GC gc, int top, int room, Palette palette) {
        gc.setFont(Fonts.small(this));
        int height = gc.getFontMetrics().getHeight() + 4;
        List<Line> lines = lines();
        int rows = 0;
        for (int at = 0; at < lines.size() && rows < LINES; at++) {
            Line line = lines.get(at);
            int left = LINES - rows - (lines.size() - at - 1);
            gc.drawImage(Icons.small(this, line.icon(), line.tone()), PAD - 1, top + rows * height - 1);
            gc.setForeground(palette.text(line.tone() == Tone.QUIET ? Tone.PLAIN : line.tone()));
            for (String part : fitting(gc, line, room, Math.max(1, left))) {
                text(gc, part, INDENT, top + rows * height, room);
                rows++;
            }
        }
    }

    private static List<String> fitting(GC gc, Line line, int room, int most) {
        List<String> parts = wrapped(gc, line.text(), room, most);
        boolean cut = gc.textExtent(parts.get(0)).x > room;
        return cut ? List.of(line.brief()) : parts;
    }

    private static List<String> wrapped(GC gc, String text, int room, int most) {
        List<String> parts = new ArrayList<>();
        String rest = text;
        while (parts.size() < most - 1 && gc.textExtent(rest).x > room) {
            int cut = rest.lastIndexOf(' ');
            while (cut > 0 && gc.textExtent(rest.substring(0, cut)).x > room) {
                cut = rest.lastIndexOf(' ', cut - 1);
            }
            if (cut <= 0) {
                break;
            }
            parts.add(rest.substring(0, cut));
            rest = rest.substring(cut + 1);
        }
        parts.add(rest);
        return parts;
    }

    private int drawHead(GC gc, Rectangle area, Palette palette) {
        int room = area.width - PAD * 2 - 1;
        int covers = face.marks().stream().mapToInt(DayCell::covers).max().orElse(0);
        int figure = covers > 0 ? gc.textExtent(covers + " ").x : 0;
        gc.setFont(face.today() || face.picked() ? Fonts.bold(this) : getFont());
        gc.setForeground(face.picked() ? palette.accent() : palette.ink());
        String name = face.today() ? "Today" : SHORT.format(face.day());
        boolean tight = gc.textExtent(name).x + figure > room;
        text(gc, tight ? TIGHT.format(face.day()) : name, PAD, TOP, room);
        int height = gc.getFontMetrics().getHeight();
        gc.setFont(getFont());
        int y = tight ? TOP + height : TOP;
        if (covers > 0) {
            gc.setForeground(palette.ink());
            textTo(gc, String.valueOf(covers), PAD + room, y);
            drawShare(gc, new Rectangle(PAD, y + height + 2, room, 3), covers, palette);
        }
        return y + height + 10;
    }

    private void drawShare(GC gc, Rectangle box, int covers, Palette palette) {
        gc.setBackground(palette.line());
        gc.fillRectangle(box);
        gc.setBackground(palette.accent());
        gc.fillRectangle(box.x, box.y, box.width * covers / Math.max(1, face.most()), box.height);
    }

    private List<Line> lines() {
        Map<DayMark.Kind, List<DayMark>> kinds = face.marks().stream()
                .filter(mark -> covers(mark) == 0)
                .collect(Collectors.groupingBy(DayMark::kind, TreeMap::new, Collectors.toList()));
        List<Line> lines = new ArrayList<>();
        kinds.forEach((kind, marks) ->
                lines.add(new Line(icon(kind), words(kind, marks), brief(kind, marks.size()), tone(kind))));
        return lines.subList(0, Math.min(LINES, lines.size()));
    }

    /** The only mark of a kind in its own words, several as their number; the tip and the pass have them all. */
    private static String words(DayMark.Kind kind, List<DayMark> marks) {
        if (marks.size() == 1) {
            return marks.get(0).text();
        }
        return marks.size()
                + switch (kind) {
                    case COVERS -> " covers";
                    case DELIVERY -> " due";
                    case CUT_OFF -> " cut-offs";
                    case EXPIRY -> " lots end";
                    case NOTE -> " notes";
                };
    }

    private static String brief(DayMark.Kind kind, int count) {
        return count
                + switch (kind) {
                    case COVERS, NOTE -> "";
                    case DELIVERY -> " due";
                    case CUT_OFF -> " close";
                    case EXPIRY -> " end";
                };
    }

    static String icon(DayMark.Kind kind) {
        return switch (kind) {
            case COVERS -> "covers";
            case DELIVERY -> "delivery";
            case CUT_OFF -> "cut-off";
            case EXPIRY -> "expiry";
            case NOTE -> "note";
        };
    }

    private static Tone tone(DayMark.Kind kind) {
        return switch (kind) {
            case CUT_OFF -> Tone.WARN;
            case EXPIRY -> Tone.BAD;
            default -> Tone.QUIET;
        };
    }

    private static void leave(Event event) {
        if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
            event.doit = true;
        }
    }
}
