package etamine.ingredients.internal;

import etamine.base.Problem;
import etamine.base.Severity;
import etamine.ingredients.Ingredient;
import etamine.ingredients.YieldChange;
import etamine.ingredients.YieldRecord;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.item.ItemWriter;
import etamine.kitchen.item.Preparation;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import etamine.storage.Document;
import etamine.storage.Transaction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Writes prices and yields on ingredients for other modules, under the same rules as the list's own changes. */
@Component
public final class WrittenFacts implements ItemWriter {
    private final IngredientShelf shelf;
    private final Kitchen kitchen;

    /** Writes on that shelf, on the house's day. */
    @Activate
    public WrittenFacts(@Reference IngredientShelf shelf, @Reference Kitchen kitchen) {
        this.shelf = shelf;
        this.kitchen = kitchen;
    }

    @Override
    public void write(Transaction transaction, String id, Optional<UnitPrice> price, Map<String, Ratio> yields) {
        Document stored = transaction
                .get(IngredientShelf.NAME, id)
                .filter(document -> !document.removed())
                .orElseThrow(() -> new IllegalArgumentException(
                        "There is no ingredient “" + id + "” to write on; add it to the list first."));
        Ingredient changed = shelf.form().read(id, stored.json());
        if (price.isPresent()) {
            changed = changed.with(item -> item.withPrice(price));
        }
        for (Map.Entry<String, Ratio> yield : yields.entrySet()) {
            changed = with(changed, yield.getKey(), yield.getValue());
        }
        String wrong = IngredientRules.problems(changed).stream()
                .filter(problem -> problem.severity() == Severity.ERROR)
                .map(Problem::text)
                .collect(Collectors.joining(" "));
        if (!wrong.isEmpty()) {
            throw new IllegalArgumentException(changed.item().name() + ": " + wrong);
        }
        String json = shelf.form().rewrite(stored.json(), changed);
        transaction.save(IngredientShelf.NAME, id, stored.revision(), json);
    }

    private Ingredient with(Ingredient ingredient, String preparation, Ratio yield) {
        if (ingredient.item().preparation(preparation).isEmpty()) {
            throw new IllegalArgumentException(
                    ingredient.item().name() + " has no preparation “" + preparation + "”; add it first.");
        }
        List<Preparation> preparations = ingredient.item().preparations().stream()
                .map(each ->
                        each.name().equals(preparation) ? new Preparation(preparation, yield, each.measures()) : each)
                .toList();
        YieldRecord record = ingredient.yieldOf(preparation);
        List<YieldChange> history = new ArrayList<>(record.history());
        history.add(new YieldChange(kitchen.today(), "", yield, "tried out in costing and accepted"));
        return ingredient
                .with(item -> item.withPreparations(preparations))
                .withYield(preparation, new YieldRecord(record.note(), record.tests(), history));
    }
}
