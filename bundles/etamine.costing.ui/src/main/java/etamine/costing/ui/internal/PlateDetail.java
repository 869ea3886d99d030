package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.widgets.StackBlocks;
import java.util.List;

/**
 * One recipe opened.
 *
 * @param title its name and what it costs
 * @param why what it earns beside the others and where its cost goes; empty when it is not on the menu
 * @param doubts what makes a figure doubtful
 * @param blocks its lines as parts of the batch's cost, in the order of the rows
 * @param lines its lines and what is added to them, dearest first
 * @param pairs the drinks chosen for it
 * @param story how the cost comes about
 */
record PlateDetail(
        String title,
        String why,
        List<String> doubts,
        List<StackBlocks.Block> blocks,
        List<Line> lines,
        List<Pair> pairs,
        Explanation story) {

    /**
     * One line used, or something added.
     *
     * @param number its number in the picture
     * @param item the item's id; empty for what is added
     * @param name its name, with the preparation
     * @param quantity as written
     * @param asPurchased before trimming
     * @param price what it was reckoned with
     * @param cost what it comes to
     * @param share of the whole, in percent
     * @param source where its price comes from and since when
     */
    record Line(
            int number,
            String item,
            String name,
            String quantity,
            String asPurchased,
            String price,
            String cost,
            String share,
            String source) {

        String key() {
            return number + "/" + item;
        }
    }

    /**
     * A drink with the plate.
     *
     * @param recipe the drink's recipe
     * @param name its name
     * @param level its price level
     * @param pour what one costs
     * @param percent pour cost in percent of its own net price
     * @param net its net price
     * @param together food cost of plate and drink
     * @param contribution what both leave together
     */
    record Pair(
            String recipe,
            String name,
            String level,
            String pour,
            String percent,
            String net,
            String together,
            String contribution) {}
}
