package etamine.diary.ui.internal;

import etamine.diary.ServiceDiary;
import etamine.kitchen.covers.Sale;
import etamine.kitchen.covers.WrittenUse;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Understands rows that were typed: a name in the first cell and a number in the second; both empty removes the row.
 */
final class RowEdits {
    private final ServiceDiary diary;
    private final KitchenNames names;

    RowEdits(ServiceDiary diary, KitchenNames names) {
        this.diary = diary;
        this.names = names;
    }

    Attempt mix(int row, List<String> cells) {
        List<String> recipes = List.copyOf(diary.mix().keySet());
        Optional<String> before = at(recipes, row);
        if (isEmpty(cells)) {
            return before.<Attempt>map(recipe -> new Attempt.Save(
                            "Taking " + names.recipe(recipe) + " off the mix", () -> diary.removeMix(recipe)))
                    .orElseGet(RowEdits::nothing);
        }
        Optional<String> recipe = names.recipeOf(cells.get(0));
        if (recipe.isEmpty()) {
            return unknown("recipe", cells.get(0));
        }
        if (isOther(before, recipe.get())) {
            return keepName("recipe");
        }
        return ratio(cells.get(1))
                .<Attempt>map(
                        perCover -> new Attempt.Save("Saving the menu mix", () -> diary.setMix(recipe.get(), perCover)))
                .orElseGet(() -> new Attempt.Refused("Write how many portions one cover takes, such as 0.22 or 1/3."));
    }

    Attempt sold(LocalDate day, int row, List<String> cells) {
        List<String> recipes = diary.sales(day, day).stream().map(Sale::recipe).toList();
        Optional<String> before = at(recipes, row);
        if (isEmpty(cells)) {
            return before.<Attempt>map(recipe -> new Attempt.Save(
                            "Taking the sales of " + names.recipe(recipe) + " back",
                            () -> diary.setSold(day, recipe, 0)))
                    .orElseGet(RowEdits::nothing);
        }
        Optional<String> recipe = names.recipeOf(cells.get(0));
        if (recipe.isEmpty()) {
            return unknown("recipe", cells.get(0));
        }
        if (isOther(before, recipe.get())) {
            return keepName("recipe");
        }
        if (!cells.get(1).matches("[0-9]{1,6}")) {
            return new Attempt.Refused("Write how many were sold as a whole number.");
        }
        long sold = Long.parseLong(cells.get(1));
        return new Attempt.Save("Saving sales", () -> diary.setSold(day, recipe.get(), sold));
    }

    Attempt stated(LocalDate day, int row, List<String> cells) {
        List<String> items =
                diary.writtenUse(day, day).stream().map(WrittenUse::item).toList();
        Optional<String> before = at(items, row);
        if (isEmpty(cells)) {
            return before.<Attempt>map(item -> new Attempt.Save(
                            "Taking the use of " + names.item(item) + " back", () -> diary.removeUse(day, item)))
                    .orElseGet(RowEdits::nothing);
        }
        Optional<String> item = names.itemOf(cells.get(0));
        if (item.isEmpty()) {
            return unknown("ingredient", cells.get(0));
        }
        if (isOther(before, item.get())) {
            return keepName("ingredient");
        }
        try {
            Quantity quantity = QuantityText.parse(cells.get(1));
            return new Attempt.Save(
                    "Saving expected use", () -> diary.setUse(new WrittenUse(day, item.get(), quantity)));
        } catch (MeasureException wrong) {
            return new Attempt.Refused(String.valueOf(wrong.getMessage()));
        }
    }

    private static Optional<String> at(List<String> keys, int row) {
        return row < keys.size() ? Optional.of(keys.get(row)) : Optional.empty();
    }

    private static boolean isEmpty(List<String> cells) {
        return cells.stream().allMatch(String::isEmpty);
    }

    private static boolean isOther(Optional<String> before, String now) {
        return before.isPresent() && !before.get().equals(now);
    }

    private static Attempt nothing() {
        return new Attempt.Refused("Write a name and a number.");
    }

    private static Attempt unknown(String what, String typed) {
        return new Attempt.Refused(
                typed.isEmpty()
                        ? "Write which " + what + "."
                        : "There is no " + what + " called “" + typed + "”, or more than one; write its id.");
    }

    private static Attempt keepName(String what) {
        return new Attempt.Refused("Empty this row to remove it, and write the other " + what + " in the last row.");
    }

    private static Optional<Ratio> ratio(String typed) {
        try {
            return Optional.of(Ratio.parse(typed.replace(',', '.'))).filter(ratio -> ratio.signum() >= 0);
        } catch (IllegalArgumentException wrong) {
            return Optional.empty();
        }
    }
}
