package etamine.shell.app.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.widgets.Fonts;
import etamine.widgets.Palette;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Font;

/** The parts of an explanation as indented lines that wrap, with their figures heavier and their sources lighter. */
final class SlateText {
    private static final int STEP = 14;
    private static final int MOST = 400;
    private final StyledText target;
    private final StringBuilder text = new StringBuilder();
    private final List<StyleRange> styles = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();

    /** What stands on one line. */
    private record Line(int depth, Optional<Subject> subject) {}

    SlateText(StyledText target) {
        this.target = target;
    }

    /** Writes all parts, up to a few hundred lines. */
    void show(List<Explanation> parts) {
        text.setLength(0);
        styles.clear();
        lines.clear();
        parts.forEach(part -> add(part, 0));
        target.setText(text.toString());
        target.setStyleRanges(styles.toArray(StyleRange[]::new));
        for (int at = 0; at < lines.size(); at++) {
            int indent = lines.get(at).depth() * STEP;
            target.setLineIndent(at, 1, indent);
            target.setLineWrapIndent(at, 1, indent + STEP / 2);
        }
    }

    /** What can be opened from that line. */
    Optional<Subject> subject(int line) {
        return line >= 0 && line < lines.size() ? lines.get(line).subject() : Optional.empty();
    }

    boolean isEmpty() {
        return lines.isEmpty();
    }

    private void add(Explanation part, int depth) {
        if (lines.size() >= MOST) {
            return;
        }
        startLine(depth, part.subject());
        int start = text.length();
        text.append(clean(part.title()));
        if (part.subject().isPresent()) {
            link(start);
        }
        if (!part.value().isEmpty()) {
            text.append("   ");
            int figure = text.length();
            text.append(clean(part.value()));
            style(figure, Fonts.bold(target), SWT.NONE);
        }
        if (!part.source().isEmpty()) {
            startLine(depth, part.subject());
            int source = text.length();
            text.append(clean(part.source()));
            style(source, Fonts.small(target), SWT.ITALIC);
        }
        part.parts().forEach(child -> add(child, depth + 1));
    }

    private void startLine(int depth, Optional<Subject> subject) {
        if (!lines.isEmpty()) {
            text.append('\n');
        }
        lines.add(new Line(depth, subject));
    }

    private void style(int start, Font font, int quiet) {
        StyleRange range = new StyleRange();
        range.start = start;
        range.length = text.length() - start;
        range.font = font;
        range.foreground = quiet == SWT.NONE ? null : Palette.of(target).quiet();
        styles.add(range);
    }

    private void link(int start) {
        StyleRange range = new StyleRange();
        range.start = start;
        range.length = text.length() - start;
        range.foreground = Palette.of(target).accent();
        styles.add(range);
    }

    private static String clean(String words) {
        return Sentences.kept(words.replace('\n', ' ').replace('\r', ' '));
    }
}
