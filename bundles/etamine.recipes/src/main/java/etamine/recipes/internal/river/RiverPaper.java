package etamine.recipes.internal.river;

import etamine.base.Printout;
import etamine.documents.Block;
import etamine.documents.Documents;
import etamine.documents.Paper;
import etamine.recipes.Cards;
import etamine.recipes.River;
import etamine.recipes.RiverPapers;
import etamine.recipes.internal.text.CardText;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** A river as shapes and, below it, as a table. */
@Component
public final class RiverPaper implements RiverPapers {
    private final Documents documents;
    private final CardText texts;

    /** Papers written by those documents. */
    @Activate
    public RiverPaper(@Reference Documents documents, @Reference CardText texts) {
        this.documents = documents;
        this.texts = texts;
    }

    @Override
    public Printout printout(River river, Cards.Sheet sheet) {
        return documents.printout(paper(river, sheet));
    }

    Paper paper(River river, Cards.Sheet sheet) {
        List<Block> blocks = new ArrayList<>();
        if (!river.nodes().isEmpty()) {
            blocks.add(new RiverPicture(river, texts::quantity).drawing());
            blocks.add(table(river));
        }
        river.unweighed()
                .forEach(each -> blocks.add(
                        new Block.Text("Not weighed: " + each.line() + " in " + each.recipe() + ". " + each.why())));
        river.remarks().forEach(remark -> blocks.add(new Block.Text(remark)));
        Paper.Size size = sheet == Cards.Sheet.LETTER ? Paper.Size.LETTER : Paper.Size.A4;
        String subtitle = "From what was bought to " + texts.quantity(river.gives());
        return new Paper(
                river.name(), subtitle, blocks, "", Paper.Sheet.of(size).across());
    }

    private Block table(River river) {
        List<Block.Column> columns = List.of(
                new Block.Column("From", 4, false),
                new Block.Column("What", 4, false),
                new Block.Column("To", 4, false),
                new Block.Column("Amount", 2, true));
        List<List<String>> rows = river.links().stream()
                .map(link -> List.of(
                        river.node(link.from()).orElseThrow().name(),
                        link.what(),
                        RiverPicture.goal(river.node(link.to()).orElseThrow()),
                        texts.quantity(link.amount())))
                .toList();
        return new Block.Grid(columns, rows, List.of());
    }
}
