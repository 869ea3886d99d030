package etamine.documents.internal;

import etamine.documents.Align;
import etamine.documents.Block;
import etamine.documents.Drawing;
import etamine.documents.Paper;
import java.util.List;

/** A paper as one HTML page that needs nothing else. */
final class HtmlPage {
    private static final String STYLE = "body{font-family:sans-serif;max-width:60em;margin:2em auto;padding:0 1em}"
            + "table{border-collapse:collapse;width:100%;margin:.5em 0}th,td{padding:.25em .6em;text-align:left;"
            + "vertical-align:top}th{border-bottom:2px solid;vertical-align:bottom}td{border-bottom:1px solid #bbb}"
            + ".r{text-align:right}.c{text-align:center}.u span{writing-mode:vertical-rl;transform:rotate(180deg)}"
            + "tfoot td{font-weight:bold;border-bottom:none}dl{display:grid;grid-template-columns:max-content 1fr}"
            + "dt{padding-right:1.5em;color:#555}dd{margin:0}p{white-space:pre-line}footer{color:#555;font-size:smaller}"
            + "aside{border:2px solid;padding:.5em .8em;margin:.8em 0;white-space:pre-line}"
            + "aside b{padding-right:.6em}.t,tr,aside,svg{break-inside:avoid}h2{break-after:avoid}"
            + ".n{break-before:page}.b{display:flex;flex-wrap:wrap;gap:0 2em}.b>div{min-width:16em}"
            + "svg{max-width:100%;height:auto;font-family:sans-serif}"
            + "img{max-width:100%;width:auto;height:auto;break-inside:avoid}";

    private final StringBuilder out = new StringBuilder();

    private HtmlPage() {}

    static String of(Paper paper) {
        HtmlPage page = new HtmlPage();
        page.out.append("<!DOCTYPE html>\n<html><head><meta charset=\"utf-8\"/><title>");
        page.out
                .append(HtmlText.escape(paper.title()))
                .append("</title><style>")
                .append(STYLE)
                .append(sheet(paper.sheet()))
                .append("</style></head><body>\n");
        page.element("h1", paper.title());
        page.element("p", paper.subtitle());
        page.blocks(paper.blocks());
        page.element("footer", paper.footer());
        return page.out.append("</body></html>\n").toString();
    }

    private static String sheet(Paper.Sheet sheet) {
        return "@page{size:" + (sheet.size() == Paper.Size.A4 ? "A4" : "letter")
                + (sheet.landscape() ? " landscape" : "") + ";margin:15mm}"
                + (sheet.print() == Paper.Print.LARGE ? "body{font-size:16pt}" : "");
    }

    private void blocks(List<Block> blocks) {
        blocks.forEach(this::block);
    }

    private void block(Block block) {
        if (block instanceof Block.Heading heading) {
            element("h2", heading.text());
        } else if (block instanceof Block.Text text) {
            element("p", text.text());
        } else if (block instanceof Block.Facts facts) {
            facts(facts);
        } else if (block instanceof Block.Grid grid) {
            grid(grid);
        } else if (block instanceof Drawing drawing) {
            out.append(Svg.of(drawing)).append('\n');
        } else {
            arrangement(block);
        }
    }

    private void arrangement(Block block) {
        if (block instanceof Block.Caution caution) {
            out.append("<aside role=\"note\"><b>!</b>");
            out.append(HtmlText.escape(caution.text())).append("</aside>\n");
        } else if (block instanceof Block.Together together) {
            out.append("<div class=\"t\">\n");
            blocks(together.blocks());
            out.append("</div>\n");
        } else if (block instanceof Block.Beside beside) {
            out.append("<div class=\"b t\">\n");
            column(beside.left(), beside.leftPercent());
            column(beside.right(), 100 - beside.leftPercent());
            out.append("</div>\n");
        } else if (block instanceof Block.NewPage) {
            out.append("<div class=\"n\"></div>\n");
        } else if (block instanceof Block.Photo photo) {
            photo(photo);
        }
    }

    private void photo(Block.Photo photo) {
        out.append("<img alt=\"").append(HtmlText.escape(photo.text()));
        out.append("\" width=\"").append(photo.picture().width());
        out.append("\" height=\"").append(photo.picture().height());
        out.append("\" style=\"max-height:").append(photo.tallest());
        out.append("pt\" src=\"data:image/jpeg;base64,");
        out.append(photo.picture().base64()).append("\"/>\n");
    }

    private void column(List<Block> blocks, int percent) {
        out.append("<div style=\"flex:").append(percent).append(" 1 0\">\n");
        blocks(blocks);
        out.append("</div>\n");
    }

    private void facts(Block.Facts facts) {
        out.append("<dl>\n");
        facts.pairs().forEach(pair -> {
            element("dt", pair.label());
            // A value stands beside its label even when it is empty.
            out.append("<dd>").append(HtmlText.escape(pair.value())).append("</dd>\n");
        });
        out.append("</dl>\n");
    }

    private void grid(Block.Grid grid) {
        out.append("<table><thead>");
        head(grid.columns());
        out.append("</thead><tbody>\n");
        grid.rows().forEach(cells -> row(grid.columns(), cells));
        out.append("</tbody>");
        if (!grid.totals().isEmpty()) {
            out.append("<tfoot>");
            row(grid.columns(), grid.totals());
            out.append("</tfoot>");
        }
        out.append("</table>\n");
    }

    private void head(List<Block.Column> columns) {
        out.append("<tr>");
        for (Block.Column column : columns) {
            String place = column.upright() ? " class=\"c u\"" : place(column.align());
            out.append("<th scope=\"col\"").append(place).append("><span>");
            out.append(HtmlText.escape(column.heading())).append("</span></th>");
        }
        out.append("</tr>\n");
    }

    private void row(List<Block.Column> columns, List<String> cells) {
        out.append("<tr>");
        for (int i = 0; i < columns.size(); i++) {
            out.append("<td").append(place(columns.get(i).align())).append('>');
            out.append(HtmlText.escape(cells.get(i))).append("</td>");
        }
        out.append("</tr>\n");
    }

    private static String place(Align align) {
        return switch (align) {
            case LEFT -> "";
            case CENTRE -> " class=\"c\"";
            case RIGHT -> " class=\"r\"";
        };
    }

    private void element(String tag, String text) {
        if (!text.isEmpty()) {
            out.append('<').append(tag).append('>');
            out.append(HtmlText.escape(text));
            out.append("</").append(tag).append(">\n");
        }
    }
}
