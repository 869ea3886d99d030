package etamine.recipes.internal.card;

import etamine.documents.Block;
import etamine.documents.Block.Facts;
import etamine.documents.Block.Facts.Pair;
import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.PairedDrink;
import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Scaled;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What stands on one card, top to bottom. */
final class CardPaper {
    private static final int FACTS_PERCENT = 56;

    private final Recipe recipe;
    private final Optional<Scaled.Batch> scaled;
    private final CardLines lines;
    private final Function<String, String> recipeName;

    /**
     * A card.
     *
     * @param recipe with the amounts the card is for
     * @param scaled how they came about; empty as written
     * @param recipeName the name of another recipe, for drinks
     */
    CardPaper(Recipe recipe, Optional<Scaled.Batch> scaled, CardLines lines, Function<String, String> recipeName) {
        this.recipe = recipe;
        this.scaled = scaled;
        this.lines = lines;
        this.recipeName = recipeName;
    }

    /**
     * The card.
     *
     * @param allergens what is said of allergens, at its end
     * @param photo beside the facts at its head
     */
    List<Block> blocks(Block allergens, Optional<Block> photo) {
        boolean plate = recipe.kind() == Kind.PLATE;
        List<Block> blocks = new ArrayList<>();
        Block facts = new Facts(facts());
        blocks.add(photo.<Block>map(each -> new Block.Beside(List.of(facts), List.of(each), FACTS_PERCENT))
                .orElse(facts));
        remarks().ifPresent(blocks::add);
        blocks.add(new Block.Heading(plate ? "On the plate" : "What goes in"));
        blocks.add(
                plate && scaled.isPresent() ? lines.plate(recipe, scaled.get().factor()) : lines.uses(recipe));
        lines.makes(recipe).ifPresent(blocks::add);
        if (!recipe.steps().isEmpty()) {
            blocks.add(new Block.Heading(plate ? "Plating" : "What to do"));
            blocks.add(CardSteps.of(recipe.steps()));
        }
        if (!recipe.notes().isEmpty()) {
            blocks.add(new Block.Heading("Notes"));
            blocks.add(new Block.Text(recipe.notes()));
        }
        blocks.add(allergens);
        return blocks;
    }

    private List<Pair> facts() {
        List<Pair> facts = new ArrayList<>();
        if (recipe.makes().size() == 1) {
            facts.add(new Pair("Makes", lines.measured(recipe.makes().get(0).quantity())));
        }
        recipe.portion().ifPresent(portion -> facts.add(new Pair("Portion", lines.measured(portion))));
        add(facts, "Station", recipe.making().station());
        recipe.keeps().ifPresent(keeps -> facts.add(new Pair("Keeps", days(keeps))));
        recipe.making().absorbs().ifPresent(water -> facts.add(new Pair("Takes up", lines.measured(water))));
        recipe.making().reducesTo().ifPresent(share -> facts.add(new Pair("Reduces to", share + " of what went in")));
        if (recipe.making().whole()) {
            facts.add(new Pair("Batches", "whole ones only"));
        }
        facts.add(new Pair("Standing", standing()));
        add(facts, "Drinks", recipe.drinks().stream().map(this::drink).collect(Collectors.joining("\n")));
        return facts;
    }

    private static void add(List<Pair> facts, String label, String value) {
        if (!value.isEmpty()) {
            facts.add(new Pair(label, value));
        }
    }

    private String drink(PairedDrink drink) {
        String name = recipeName.apply(drink.recipe());
        return drink.level().isEmpty() ? name : name + " (" + drink.level() + ")";
    }

    private String standing() {
        String tried = switch (recipe.tested()) {
            case 0 -> "draft, not tested yet";
            case 1 -> "tested once";
            default -> "tested " + recipe.tested() + " times with the same result";
        };
        return recipe.standing().archived() ? tried + "; archived" : tried;
    }

    static String days(Period keeps) {
        int days = keeps.getDays();
        boolean daysOnly = keeps.toTotalMonths() == 0;
        return daysOnly ? days + (days == 1 ? " day" : " days") : keeps.toString();
    }

    /** What scaling asks a cook to judge. */
    private Optional<Block> remarks() {
        List<String> said = new ArrayList<>();
        scaled.ifPresent(batch -> {
            said.addAll(batch.reasons());
            said.addAll(batch.remarks());
        });
        return said.isEmpty() ? Optional.empty() : Optional.of(new Block.Text(String.join("\n", said)));
    }
}
