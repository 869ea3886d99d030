package etamine.base.verb;

import etamine.base.Exemption;
import java.util.ArrayList;
import java.util.List;

/** Lines up rows for the console. Columns whose heading starts with {@code >} are right-aligned. Not thread-safe. */
@Exemption(
        rule = "exported-types",
        because = "every verb lays out text the same way; a service for it would have to be passed to each")
public final class TextTable {
    private final List<String[]> rows = new ArrayList<>();
    private final boolean[] right;

    /** A table with these headings. */
    public TextTable(String... headings) {
        right = new boolean[headings.length];
        String[] first = new String[headings.length];
        for (int i = 0; i < headings.length; i++) {
            right[i] = headings[i].startsWith(">");
            first[i] = right[i] ? headings[i].substring(1) : headings[i];
        }
        rows.add(first);
    }

    /** Adds one row; missing cells stay empty. */
    public TextTable row(String... cells) {
        String[] row = new String[right.length];
        for (int i = 0; i < right.length; i++) {
            row[i] = i < cells.length ? cells[i] : "";
        }
        rows.add(row);
        return this;
    }

    /** The lines, headings first; empty when there are no rows. */
    public List<String> lines() {
        if (rows.size() == 1) {
            return List.of();
        }
        int[] width = new int[right.length];
        for (String[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                width[i] = Math.max(width[i], row[i].length());
            }
        }
        return rows.stream().map(row -> line(row, width)).toList();
    }

    private String line(String[] row, int[] width) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < row.length; i++) {
            String pad = " ".repeat(width[i] - row[i].length());
            line.append(i == 0 ? "" : "  ").append(right[i] ? pad + row[i] : row[i] + pad);
        }
        return line.toString().stripTrailing();
    }
}
