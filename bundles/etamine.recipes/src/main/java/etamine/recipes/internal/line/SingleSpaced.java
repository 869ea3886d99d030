package etamine.recipes.internal.line;

import etamine.recipes.UseLines.Reading;
import etamine.recipes.UseLines.Span;
import java.util.Arrays;
import java.util.List;

/** A text with single blanks between its words that knows where each character stood before. */
final class SingleSpaced {
    private final String text;
    private final int[] origins;

    private SingleSpaced(String text, int[] origins) {
        this.text = text;
        this.origins = origins;
    }

    static SingleSpaced of(String typed) {
        StringBuilder text = new StringBuilder(typed.length());
        int[] origins = new int[typed.length()];
        for (int i = 0; i < typed.length(); i++) {
            char character = typed.charAt(i);
            boolean blank = Character.isWhitespace(character) || Character.isSpaceChar(character);
            boolean afterBlank = text.length() == 0 || text.charAt(text.length() - 1) == ' ';
            if (!blank || !afterBlank) {
                origins[text.length()] = i;
                text.append(blank ? ' ' : character);
            }
        }
        int end = text.length();
        while (end > 0 && text.charAt(end - 1) == ' ') {
            end--;
        }
        return new SingleSpaced(text.substring(0, end), Arrays.copyOf(origins, end));
    }

    String text() {
        return text;
    }

    /** The reading of this text with the places it had before. */
    Reading at(Reading reading) {
        List<Span> spans = reading.spans().stream()
                .filter(span -> span.from() < span.to())
                .map(span -> new Span(span.part(), origins[span.from()], origins[span.to() - 1] + 1))
                .toList();
        return withSpans(reading, spans);
    }

    static Reading withSpans(Reading reading, List<Span> spans) {
        if (reading instanceof Reading.Clear clear) {
            return new Reading.Clear(clear.use(), spans);
        }
        Reading.Unclear unclear = (Reading.Unclear) reading;
        return new Reading.Unclear(unclear.text(), spans, unclear.suggestions());
    }
}
