package etamine.costing.internal.paper;

import etamine.base.Printout;
import etamine.costing.CostPaper;
import etamine.documents.Documents;
import etamine.documents.Paper;
import etamine.documents.Workbook;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/**
 * A page and the table on it.
 *
 * @param documents what writes them
 * @param paper the page
 * @param table the table
 */
record LaidOutPaper(Documents documents, Paper paper, Workbook table) implements CostPaper {

    @Override
    public Printout printout() {
        return documents.printout(paper);
    }

    @Override
    public void write(Path file) throws IOException {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        if (name.endsWith(".pdf")) {
            documents.pdf(paper, file);
        } else if (name.endsWith(".html")) {
            documents.html(paper, file);
        } else if (name.endsWith(".csv")) {
            documents.csv(table.sheets().get(0), file);
        } else if (name.endsWith(".xlsx")) {
            documents.xlsx(table, file);
        } else {
            throw new IllegalArgumentException("“" + file.getFileName()
                    + "” does not say what kind of file it is; end it in .pdf, .html, .csv or" + " .xlsx.");
        }
    }
}
