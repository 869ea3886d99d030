package etamine.inventory.internal;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.inventory.RefusedException;
import etamine.inventory.internal.ItemMeasure.Amount;
import etamine.kitchen.item.Item;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Use;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.Conversion;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Making batches of a recipe: what it uses leaves the shelf as purchased, first-expired first, and what it makes comes
 * onto it, with its last day by the kitchen's own figure of how long it keeps, and with the cost of the lots used.
 *
 * @param recipe the recipe
 * @param batches how many
 * @param movers what turns wishes into drafts
 * @param items what is known of items
 * @param journal the ledger
 */
record Batch(Recipe recipe, Ratio batches, Movers movers, KnownItems items, StockJournal journal) {

    List<Draft> drafts(Instant at, LocalDate today) {
        ObjectNode why = Json.empty().put("recipe", recipe.id()).put("batches", batches.toString());
        List<Draft> drafts = new ArrayList<>();
        Map<String, Map<LotKey, Long>> lots = new HashMap<>();
        for (Use use : recipe.uses()) {
            Amount amount = used(use);
            Map<LotKey, Long> left =
                    lots.computeIfAbsent(use.item(), item -> new TreeMap<>(Netting.of(journal.amounts(item))));
            drafts.addAll(movers.take(left, MovementKind.USED, use.item(), amount, Optional.empty(), why));
        }
        BatchCost cost = BatchCost.of(recipe, batches, drafts, items);
        for (int i = 0; i < recipe.makes().size(); i++) {
            drafts.add(made(recipe.makes().get(i), i == 0, cost, at, today, why));
        }
        return drafts;
    }

    private Amount used(Use use) {
        Optional<Item> item = items.find(use.item());
        Movers.refuseIf(
                items.refuses(use.item()),
                RefusedException.Reason.UNKNOWN_ITEM,
                "The recipe uses “" + use.item() + "”, which is not among the items; add it or correct the recipe.");
        if (item.isEmpty()) {
            return movers.amount(use.item(), use.quantity().times(batches));
        }
        if (use.asPurchased(item.get()) instanceof Conversion.Missing missing) {
            throw RefusedException.missing(use.item(), missing.text());
        }
        return movers.amount(use.item(), use.asPurchased(item.get()).orThrow().times(batches));
    }

    private Draft made(Make make, boolean main, BatchCost cost, Instant at, LocalDate today, ObjectNode why) {
        Quantity quantity = make.quantity().times(batches);
        Amount amount = movers.amount(make.item(), quantity);
        Optional<Period> keeps = main ? recipe.keeps() : Optional.empty();
        Optional<LocalDate> useBy =
                keeps.or(() -> items.find(make.item()).flatMap(Item::keeps)).map(today::plus);
        LotKey lot = new LotKey(
                movers.usualPlace(make.item()),
                "",
                useBy.map(LocalDate::toString).orElse(""),
                cost.of(make).map(Object::toString).orElse(""),
                LotKey.text(at),
                amount.dimension());
        return new Draft(MovementKind.MADE, make.item(), lot, amount.base(), why);
    }
}
