package etamine.diary.internal;

import etamine.base.Problem;
import etamine.kitchen.check.BookCheck;
import etamine.kitchen.covers.Sale;
import etamine.kitchen.covers.WrittenUse;
import etamine.kitchen.item.Items;
import etamine.kitchen.recipe.Recipes;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Finds entries that cannot be read, and references to recipes and items that are not there. */
@Component
public final class DiaryCheck implements BookCheck {
    private final ShelfDiary diary;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Recipes recipes;

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable Items items;

    /** Checks the open diary. */
    @Activate
    public DiaryCheck(@Reference ShelfDiary diary) {
        this.diary = diary;
    }

    @Override
    public List<Problem> check() {
        List<Problem> problems = new ArrayList<>();
        diary.unreadable().forEach((where, why) -> problems.add(Problem.error("unreadable", where, why)));
        Optional.ofNullable(recipes).ifPresent(known -> checkRecipes(known, problems));
        Optional.ofNullable(items).ifPresent(known -> checkItems(known, problems));
        return problems;
    }

    private void checkRecipes(Recipes known, List<Problem> problems) {
        for (String recipe : diary.mix().keySet()) {
            if (known.find(recipe).isEmpty()) {
                problems.add(Problem.warning(
                        "unknown-recipe",
                        Entries.MIX + "/" + recipe,
                        "The menu mix names “" + recipe
                                + "”, which is no recipe; take it off the mix or add the recipe."));
            }
        }
        TreeSet<String> sold = new TreeSet<>();
        diary.allSales().stream()
                .map(Sale::recipe)
                .filter(id -> known.find(id).isEmpty())
                .forEach(sold::add);
        sold.forEach(recipe -> problems.add(Problem.note(
                "unknown-recipe",
                Entries.SALES + "/" + recipe,
                "“" + recipe + "” was sold but is no recipe; its sales tell nothing about what is used.")));
    }

    private void checkItems(Items known, List<Problem> problems) {
        for (WrittenUse use : diary.writtenUse(LocalDate.MIN, LocalDate.MAX)) {
            if (known.find(use.item()).isEmpty()) {
                problems.add(Problem.warning(
                        "unknown-item",
                        Entries.USE + "/" + Entries.useId(use.date(), use.item()),
                        "Use of “" + use.item() + "” is expected on " + use.date()
                                + ", but there is no such item; add it or take the line back."));
            }
        }
    }
}
