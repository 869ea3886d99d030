package etamine.costing.internal.paper;

import etamine.costing.ButcherSheet;
import etamine.costing.ButcherSheet.Part;
import etamine.costing.ButcherSheet.Portion;
import etamine.costing.ButcherSheet.Usable;
import etamine.costing.internal.words.Amounts;
import etamine.costing.internal.words.CostJson;
import etamine.documents.Block;
import etamine.documents.Block.Facts.Pair;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A butcher's test on paper.
 *
 * @param sheet the test
 */
record ButcherPaper(ButcherSheet sheet) {
    private static final int FACTOR_PLACES = 4;

    CostTable<Part> table() {
        return CostTable.of(sheet.parts())
                .with("Part", 6, Part::name)
                .with("Weight", 3, part -> Amounts.text(part.weight()))
                .with("%", 2, Part::percent)
                .with("Valued at", 4, part -> part.valuedAt().map(CostJson::text))
                .with("Value", 2, Part::value)
                .with("A usable kg", 3, part -> part.usable().map(Usable::perKg))
                .with(
                        "Factor per kg",
                        3,
                        part -> part.usable().flatMap(Usable::factor).map(ButcherPaper::factor))
                .with("Portion", 3, part -> portion(part).map(one -> Amounts.text(one.size()) + " x " + one.count()))
                .with("One costs", 3, part -> portion(part).map(Portion::cost))
                .with(
                        "Factor per portion",
                        3,
                        part -> portion(part).flatMap(Portion::factor).map(ButcherPaper::factor))
                .with("Kg at the new price", 3, part -> part.usable().flatMap(Usable::askedPerKg))
                .with("One at the new price", 3, part -> portion(part).flatMap(Portion::askedCost));
    }

    private static Optional<Portion> portion(Part part) {
        return part.usable().flatMap(Usable::portion);
    }

    private static BigDecimal factor(BigDecimal factor) {
        return factor.setScale(FACTOR_PLACES, RoundingMode.HALF_UP);
    }

    List<Block> blocks() {
        List<Pair> facts = new ArrayList<>();
        facts.add(new Pair("As purchased", Amounts.text(sheet.purchased()) + " of " + sheet.boughtName()));
        sheet.dealer().ifPresent(price -> facts.add(new Pair("Dealer's price", CostJson.text(price))));
        sheet.asked().ifPresent(price -> facts.add(new Pair("New price", CostJson.text(price))));
        facts.add(new Pair("Cost in all", Amounts.text(sheet.cost())));
        facts.add(new Pair("Lost", Amounts.text(sheet.loss())));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Facts(facts));
        blocks.add(table().grid());
        sheet.notes().forEach(note -> blocks.add(new Block.Text(note)));
        return blocks;
    }
}
