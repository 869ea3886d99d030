package etamine.ingredients.internal;

import etamine.base.Problem;
import etamine.ingredients.Change;
import etamine.ingredients.Ingredient;
import etamine.ingredients.IngredientList;
import etamine.ingredients.IngredientMerges;
import etamine.kitchen.item.ItemMentions;
import etamine.kitchen.item.ItemMentions.Mention;
import etamine.storage.BookException;
import etamine.storage.Transaction;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Merges by asking every module for its mentions, all in one transaction. A preview is the same, given up at its end. */
@Component
public final class WholeBookMerges implements IngredientMerges {
    private final IngredientShelf shelf;
    private final IngredientList list;

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile List<ItemMentions> modules = List.of();

    /** Merges on that shelf. */
    @Activate
    public WholeBookMerges(@Reference IngredientShelf shelf, @Reference IngredientList list) {
        this.shelf = shelf;
        this.list = list;
    }

    /** Thrown to give a tried transaction up. */
    private static final class GivenUp extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    @Override
    public List<Likeness> duplicates() {
        return Duplicates.of(
                list.all().values(),
                ingredient -> 2 * list.usedIn(ingredient.id()).size()
                        + ingredient.item().preparations().size());
    }

    @Override
    public List<Mention> mentions(String item) {
        return modules.stream()
                .flatMap(module -> module.of(item).stream())
                .sorted(Comparator.comparing(Mention::kind).thenComparing(Mention::text))
                .toList();
    }

    @Override
    public Preview preview(String from, String into) {
        MergedIngredient merge = merge(known(from), known(into));
        List<Mention> mentions = mentions(from);
        Optional<String> refusal = refusal(merge).or(() -> tried(merge));
        List<Problem> problems =
                refusal.map(text -> List.of(problem(merge, text))).orElse(List.of());
        return new Preview(merge.result(), mentions, merge.remarks(), problems);
    }

    @Override
    public Change merge(String from, String into) {
        MergedIngredient merge = merge(known(from), known(into));
        Optional<String> refusal = refusal(merge);
        if (refusal.isPresent()) {
            return new Change.Refused(List.of(problem(merge, refusal.get())));
        }
        String label = "Merge " + name(merge.from()) + " into " + name(merge.into());
        try {
            return new Change.Done(shelf.book().write(label, transaction -> rewrite(transaction, merge)));
        } catch (IllegalArgumentException cannot) {
            return new Change.Refused(List.of(problem(merge, cannot.getMessage())));
        }
    }

    private Optional<String> tried(MergedIngredient merge) {
        try {
            shelf.book().write("Try a merge", transaction -> {
                rewrite(transaction, merge);
                throw new GivenUp();
            });
            return Optional.empty();
        } catch (GivenUp asWished) {
            return Optional.empty();
        } catch (IllegalArgumentException cannot) {
            return Optional.of(cannot.getMessage());
        }
    }

    private long rewrite(Transaction transaction, MergedIngredient merge) {
        Ingredient result = merge.result();
        modules.forEach(module -> module.rewrite(transaction, merge.from().item(), result.item()));
        shelf.merged().values().stream()
                .filter(gone ->
                        gone.mergedInto().equals(Optional.of(merge.from().id())))
                .forEach(gone ->
                        shelf.save(transaction, gone.mergedInto(merge.into().id())));
        shelf.save(transaction, merge.from().mergedInto(merge.into().id()));
        return shelf.save(transaction, result);
    }

    private static MergedIngredient merge(Ingredient from, Ingredient into) {
        return new MergedIngredient(from, into);
    }

    private static Optional<String> refusal(MergedIngredient merge) {
        return merge.from().id().equals(merge.into().id())
                ? Optional.of("Choose two different ingredients.")
                : merge.refusal();
    }

    private Ingredient known(String id) {
        return list.find(id)
                .orElseThrow(() -> new BookException(
                        BookException.Reason.MISSING, "There is no ingredient “" + id + "”; look for its id."));
    }

    private static Problem problem(MergedIngredient merge, String text) {
        return Problem.error("merge", IngredientShelf.NAME + "/" + merge.from().id(), text);
    }

    private static String name(Ingredient ingredient) {
        return ingredient.item().name();
    }
}
