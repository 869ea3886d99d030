package etamine.costing.ui.internal;

import etamine.base.Explanation;
import etamine.base.Subject;
import etamine.costing.DatedPrice;
import etamine.costing.Moved;
import etamine.measures.Money;
import etamine.widgets.ChangeBars;
import etamine.widgets.TimeChart;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What has changed since a day, as rows, pictures and sentences. Reading it takes long; showing it does not. */
final class ChangesModel {
    private static final int WEEKS = 4;
    private final CostingParts parts;
    private final Figures figures;

    ChangesModel(CostingParts parts) {
        this.parts = parts;
        this.figures = parts.figures();
    }

    /** The day from which changes are shown at first. */
    LocalDate start() {
        return parts.kitchen().today().minusWeeks(WEEKS);
    }

    LocalDate today() {
        return parts.kitchen().today();
    }

    /** Reads the history; call it in the background. */
    Since read(LocalDate day) {
        Moved moved = parts.history().since(day);
        List<PriceMoveRow> prices = new ArrayList<>();
        for (Moved.PriceMove move : moved.prices()) {
            prices.add(new PriceMoveRow(
                    move, parts.items().name(move.item()), figures.day(move.on()), String.valueOf(prices.size())));
        }
        prices.sort(Comparator.comparing((PriceMoveRow row) -> row.move().on()).reversed());
        List<PlateMoveRow> plates = moved.plates().stream()
                .map(move -> new PlateMoveRow(move, parts.recipeName(move.recipe())))
                .toList();
        return new Since(day, prices, plates);
    }

    /** The prices of an item as a line over days; call it in the background. */
    TimeChart.Chart course(String item) {
        List<DatedPrice> prices = parts.history().prices(item);
        List<TimeChart.Spot> spots = new ArrayList<>();
        for (DatedPrice price : prices) {
            spots.add(spot(price, price.from(), String.valueOf(spots.size())));
        }
        if (!prices.isEmpty() && prices.get(prices.size() - 1).from().isBefore(today())) {
            spots.add(spot(prices.get(prices.size() - 1), today(), "today"));
        }
        String unit = prices.isEmpty()
                ? ""
                : ", " + figures.currency() + " / "
                        + prices.get(prices.size() - 1).price().per().unit();
        String name = parts.items().name(item);
        return new TimeChart.Chart(name + unit, List.of(new TimeChart.Line(name, spots, true)), Optional.empty());
    }

    private TimeChart.Spot spot(DatedPrice price, LocalDate day, String id) {
        String from =
                day.equals(price.from()) ? "from " + figures.day(day) : "today, since " + figures.day(price.from());
        String text = Figures.price(price.price()) + " " + from + ", " + price.text();
        return new TimeChart.Spot(id, day, price.price().amount().doubleValue(), text);
    }

    /** A plate's change as bars that add up. */
    List<ChangeBars.Row> bars(PlateMoveRow row, LocalDate since) {
        Moved.PlateMove move = row.move();
        List<ChangeBars.Row> bars = new ArrayList<>();
        bars.add(whole(move.written().isPresent() ? "When first written" : "On " + figures.day(since), move.before()));
        effect(bars, "Prices", move.effects().price());
        effect(bars, "Yields", move.effects().yield());
        effect(bars, "Portions", move.effects().portion());
        effect(bars, "Recipe", move.effects().recipe());
        bars.add(whole("Now", move.now()));
        return bars;
    }

    private ChangeBars.Row whole(String label, Money amount) {
        return new ChangeBars.Row(label, amount.amount().doubleValue(), figures.full(amount), true);
    }

    private static void effect(List<ChangeBars.Row> bars, String label, Money amount) {
        bars.add(new ChangeBars.Row(label, amount.amount().doubleValue(), Figures.change(amount), false));
    }

    /** What moved a plate, as a table. */
    List<CauseRow> causes(PlateMoveRow row) {
        List<CauseRow> causes = new ArrayList<>();
        for (Moved.Cause cause : row.move().causes()) {
            causes.add(new CauseRow(
                    String.valueOf(causes.size()),
                    cause.subject(),
                    parts.name(cause.subject()),
                    word(cause.kind()),
                    cause.amount(),
                    cause.text().replace(parts.name(cause.subject()) + ": ", "")));
        }
        return causes;
    }

    private static String word(Moved.Kind kind) {
        return switch (kind) {
            case PRICE -> "price";
            case YIELD -> "yield";
            case PORTION -> "portion";
            case RECIPE -> "recipe";
        };
    }

    /** How a plate's cost came to move, down to each cause. */
    Explanation explain(PlateMoveRow row, LocalDate since) {
        Moved.PlateMove move = row.move();
        List<Explanation> all = new ArrayList<>();
        all.add(Explanation.leaf("On " + figures.day(since), figures.full(move.before()), row.writtenText(figures)));
        all.add(effect("Prices", move.effects().price(), "other prices of what is bought"));
        all.add(effect("Yields", move.effects().yield(), "other yields, and batches that give more or less"));
        all.add(effect("Portions", move.effects().portion(), "other sizes of portions and of lines"));
        all.add(effect("Recipe", move.effects().recipe(), "other lines, measures, Q factor or packaging"));
        all.add(Explanation.leaf("Now", figures.full(move.now()), "the four effects add up to the change"));
        causes(row)
                .forEach(cause -> all.add(new Explanation(
                        cause.name() + ", " + cause.kind(),
                        cause.amountText(),
                        cause.text(),
                        List.of(),
                        Optional.of(new Subject(
                                parts.items().find(cause.subject()).isPresent() ? "item" : "recipe",
                                cause.subject())))));
        return Explanation.of(row.name(), Figures.change(move.change()) + "\u00a0" + figures.currency(), all)
                .about(new Subject("cost", move.recipe()));
    }

    private Explanation effect(String name, Money amount, String what) {
        return Explanation.leaf(name, Figures.change(amount), what);
    }

    /** A price move with where it comes from. */
    Explanation explain(PriceMoveRow row) {
        Moved.PriceMove move = row.move();
        return new Explanation(
                row.name(),
                Figures.price(move.to()),
                move.source(),
                List.of(
                        Explanation.leaf("Before", Figures.price(move.from()), ""),
                        Explanation.leaf("From " + row.day(), Figures.price(move.to()), move.source()),
                        Explanation.leaf("Change", row.percentText(), "")),
                Optional.of(new Subject("item", move.item())));
    }

    /** How much has changed, in a sentence. */
    String sentence(Since since) {
        int items =
                (int) since.prices().stream().map(PriceMoveRow::item).distinct().count();
        long over =
                since.plates().stream().filter(row -> row.move().overTarget()).count();
        if (items == 0 && since.plates().isEmpty()) {
            return "No price and no recipe has changed since " + figures.day(since.day()) + ".";
        }
        String prices = items == 0
                ? "No price moved"
                : items == 1 ? "The price of 1 item moved" : "The prices of " + items + " items moved";
        int count = since.plates().size();
        String plates = count == 0
                ? "no plate costs anything else"
                : count == 1 ? "1 plate costs something else" : count + " plates cost something else";
        String beyond = over == 0 ? "" : "; " + over + (over == 1 ? " is" : " are") + " over the food-cost target";
        return prices + " since " + figures.day(since.day()) + ", " + plates + beyond + ".";
    }

    /**
     * What has changed since a day.
     *
     * @param day the day
     * @param prices the price moves, latest first
     * @param plates the plates, the largest rise first
     */
    record Since(LocalDate day, List<PriceMoveRow> prices, List<PlateMoveRow> plates) {}
}
