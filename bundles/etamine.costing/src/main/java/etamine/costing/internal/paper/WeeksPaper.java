package etamine.costing.internal.paper;

import etamine.costing.WeekCost;
import etamine.documents.Block;
import java.util.List;

/**
 * The food cost of some weeks on paper.
 *
 * @param weeks the weeks, oldest first
 */
record WeeksPaper(List<WeekCost> weeks) {

    CostTable<WeekCost> table() {
        return CostTable.of(weeks)
                .with("Week", 5, week -> week.days().toString())
                .with("Net sales", 3, WeekCost::sales)
                .with("Should have cost", 3, WeekCost::ideal)
                .with("Should be %", 2, WeekCost::idealPercent)
                .with("Cost", 3, WeekCost::actual)
                .with("Food cost %", 2, WeekCost::actualPercent);
    }

    List<Block> blocks() {
        return weeks.isEmpty() ? List.of(new Block.Text("Nothing was sold in these weeks.")) : List.of(table().grid());
    }
}
