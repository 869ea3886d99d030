package etamine.costing.ui.internal;

import etamine.costing.ButcherSheet;
import etamine.measures.Money;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import etamine.widgets.Choice;
import etamine.widgets.StackBlocks;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The butcher's test as rows, blocks and sentences. */
final class ButcherModel {
    private static final int FACTOR_PLACES = 4;
    private final CostingParts parts;
    private final Figures figures;

    ButcherModel(CostingParts parts) {
        this.parts = parts;
        this.figures = parts.figures();
    }

    /** Recipes that have a sheet. */
    List<Choice> choices() {
        return parts.butcher().recipes().stream()
                .map(id -> new Choice(id, parts.recipeName(id)))
                .toList();
    }

    /** The sheet at the book's price, or at another price a kg and with another portion. */
    ButcherSheet sheet(String recipe, Optional<Money> dealer, Optional<Quantity> portion) {
        return parts.butcher()
                .sheet(recipe, dealer.map(money -> new UnitPrice(money.amount(), Quantity.of(1, Unit.KG))), portion);
    }

    java.util.Currency currency() {
        return parts.kitchen().house().currency();
    }

    /** What it is made from and what it comes to, in a sentence. */
    String sentence(ButcherSheet sheet) {
        return figures.quantity(sheet.purchased()) + " of "
                + parts.items().name(sheet.bought())
                + sheet.dealer().map(price -> " at " + Figures.price(price)).orElse(", of which no price is known")
                + ": " + figures.full(sheet.cost()) + ". "
                + (sheet.loss().signum() < 0
                        ? "More comes out than went in, by "
                                + figures.quantity(sheet.loss().negate())
                        : "Lost: " + figures.quantity(sheet.loss()))
                + "."
                + sheet.asked()
                        .map(price -> " At " + Figures.price(price) + ", see the last columns.")
                        .orElse("");
    }

    /** The weight as a band: the parts, then what is lost. */
    List<StackBlocks.Block> blocks(ButcherSheet sheet) {
        List<StackBlocks.Block> blocks = new ArrayList<>();
        sheet.parts()
                .forEach(part -> blocks.add(new StackBlocks.Block(
                        part.name(), part.percent().doubleValue(), Figures.percent(part.percent()))));
        if (sheet.loss().signum() > 0) {
            BigDecimal lost = sheet.parts().stream()
                    .map(ButcherSheet.Part::percent)
                    .reduce(BigDecimal.valueOf(100), BigDecimal::subtract);
            blocks.add(new StackBlocks.Block("lost", lost.doubleValue(), Figures.percent(lost)));
        }
        return blocks;
    }

    /**
     * One part.
     *
     * @param number its number in the band
     * @param item the item
     * @param cells the figures of its row, in the order of the columns
     */
    record Row(int number, String item, String name, List<String> cells) {
        String cell(int at) {
            return cells.get(at);
        }
    }

    /** What each part weighs, bears and comes to a kg. */
    List<Row> rows(ButcherSheet sheet) {
        List<Row> rows = new ArrayList<>();
        for (ButcherSheet.Part part : sheet.parts()) {
            Optional<ButcherSheet.Usable> usable = part.usable();
            rows.add(new Row(
                    rows.size() + 1,
                    part.item(),
                    part.name() + (usable.isEmpty() ? ", credited" : ""),
                    List.of(
                            figures.quantity(part.weight()),
                            Figures.percent(part.percent()),
                            part.valuedAt().map(Figures::price).orElse(""),
                            Figures.money(part.value()),
                            usable.map(found -> Figures.money(found.perKg())).orElse(""),
                            usable.flatMap(ButcherSheet.Usable::factor)
                                    .map(ButcherModel::factor)
                                    .orElse(""),
                            usable.flatMap(ButcherSheet.Usable::askedPerKg)
                                    .map(Figures::money)
                                    .orElse(""))));
        }
        return rows;
    }

    /** What a portion of each usable part costs, now and at the price that is tried. */
    List<Row> portions(ButcherSheet sheet) {
        List<Row> rows = new ArrayList<>();
        for (int at = 0; at < sheet.parts().size(); at++) {
            ButcherSheet.Part part = sheet.parts().get(at);
            int number = at + 1;
            part.usable()
                    .flatMap(ButcherSheet.Usable::portion)
                    .ifPresent(portion -> rows.add(new Row(
                            number,
                            part.item(),
                            part.name(),
                            List.of(
                                    portion(portion),
                                    Figures.money(portion.cost()),
                                    portion.factor().map(ButcherModel::factor).orElse(""),
                                    portion.askedCost().map(Figures::money).orElse("")))));
        }
        return rows;
    }

    private String portion(ButcherSheet.Portion portion) {
        return portion.count() + "\u00a0\u00d7\u00a0" + figures.quantity(portion.size());
    }

    private static String factor(BigDecimal factor) {
        return factor.setScale(FACTOR_PLACES, RoundingMode.HALF_UP).toPlainString();
    }

    /** What has to be bought for so many portions of each usable part that has one. */
    String need(ButcherSheet sheet, long portions) {
        return String.join(
                " ",
                sheet.usable().stream()
                        .flatMap(part -> sheet
                                .forPortions(part, portions)
                                .map(need -> portions + " portions of " + part.name() + " take "
                                        + figures.quantity(need.purchased()) + " as purchased.")
                                .stream())
                        .toList());
    }
}
