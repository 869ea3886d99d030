package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.widgets.StackBlocks;
import java.util.List;

/**
 * One recipe opened.
 *
 * @param title its name and what a batch costs
 * @param blocks its lines as parts of the batch's cost, dearest first
 * @param lines its lines as text, in the order of the recipe
 * @param sentences what makes a figure doubtful
 * @param story how the cost comes about
 */
record CostDetail(
        String title, List<StackBlocks.Block> blocks, List<Line> lines, List<String> sentences, Explanation story) {

    /**
     * One line used.
     *
     * @param item the item's id
     * @param name its name, with the preparation
     * @param quantity as written
     * @param asPurchased before trimming
     * @param price what it was reckoned with
     * @param cost what it comes to
     */
    record Line(String item, String name, String quantity, String asPurchased, String price, String cost) {}
}
