package etamine.documents.internal;

import etamine.documents.Block;
import etamine.documents.Paper;
import java.util.List;

/** A paper as one HTML page that needs nothing else. */
final class HtmlPage {
    private static final String STYLE = "body{font-family:sans-serif;max-width:60em;margin:2em auto;padding:0 1em}"
            + "table{border-collapse:collapse;width:100%}th,td{padding:.25em .6em;text-align:left;vertical-align:top}"
            + "th{border-bottom:2px solid}td{border-bottom:1px solid #bbb}.r{text-align:right}"
            + "tfoot td{font-weight:bold;border-bottom:none}dl{display:grid;grid-template-columns:max-content 1fr}"
            + "dt{padding-right:1.5em;color:#555}dd{margin:0}p{white-space:pre-line}footer{color:#555;font-size:smaller}";

    private final StringBuilder out = new StringBuilder();

    private HtmlPage() {}

    static String of(Paper paper) {
        HtmlPage page = new HtmlPage();
        page.out.append("<!DOCTYPE html>\n<html><head><meta charset=\"utf-8\"><title>");
        page.out
                .append(escape(paper.title()))
                .append("</title><style>")
                .append(STYLE)
                .append("</style></head><body>\n");
        page.element("h1", paper.title());
        page.element("p", paper.subtitle());
        paper.blocks().forEach(page::block);
        page.element("footer", paper.footer());
        return page.out.append("</body></html>\n").toString();
    }

    private void block(Block block) {
        if (block instanceof Block.Heading heading) {
            element("h2", heading.text());
        } else if (block instanceof Block.Text text) {
            element("p", text.text());
        } else if (block instanceof Block.Facts facts) {
            out.append("<dl>\n");
            facts.pairs().forEach(pair -> {
                element("dt", pair.label());
                element("dd", pair.value());
            });
            out.append("</dl>\n");
        } else if (block instanceof Block.Grid grid) {
            grid(grid);
        }
    }

    private void grid(Block.Grid grid) {
        out.append("<table><thead>");
        row(
                "th",
                grid.columns(),
                grid.columns().stream().map(Block.Column::heading).toList());
        out.append("</thead><tbody>\n");
        grid.rows().forEach(cells -> row("td", grid.columns(), cells));
        out.append("</tbody>");
        if (!grid.totals().isEmpty()) {
            out.append("<tfoot>");
            row("td", grid.columns(), grid.totals());
            out.append("</tfoot>");
        }
        out.append("</table>\n");
    }

    private void row(String tag, List<Block.Column> columns, List<String> cells) {
        out.append("<tr>");
        for (int i = 0; i < columns.size(); i++) {
            out.append('<').append(tag).append(columns.get(i).right() ? " class=\"r\">" : ">");
            out.append(escape(cells.get(i))).append("</").append(tag).append('>');
        }
        out.append("</tr>\n");
    }

    private void element(String tag, String text) {
        if (!text.isEmpty()) {
            out.append('<')
                    .append(tag)
                    .append('>')
                    .append(escape(text))
                    .append("</")
                    .append(tag)
                    .append(">\n");
        }
    }

    private static String escape(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
