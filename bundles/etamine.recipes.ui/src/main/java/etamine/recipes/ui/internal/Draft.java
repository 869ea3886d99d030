package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Kind;
import etamine.kitchen.recipe.Make;
import etamine.kitchen.recipe.MenuPrice;
import etamine.kitchen.recipe.Recipe;
import etamine.kitchen.recipe.Step;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A recipe being changed in one respect; the rest stays. */
final class Draft {
    private final Recipe from;
    private String name;
    private Kind kind;
    private List<Use> uses;
    private List<Make> makes;
    private Optional<Quantity> portion;
    private Optional<Period> keeps;
    private int tested;
    private List<Step> steps;
    private Optional<MenuPrice> menu;
    private String notes;

    private Draft(Recipe from) {
        this.from = from;
        name = from.name();
        kind = from.kind();
        uses = from.uses();
        makes = from.makes();
        portion = from.portion();
        keeps = from.keeps();
        tested = from.tested();
        steps = from.steps();
        menu = from.menu();
        notes = from.notes();
    }

    static Draft of(Recipe recipe) {
        return new Draft(recipe);
    }

    Recipe done() {
        return new Recipe(from.id(), name, kind, uses, makes, portion, keeps, tested, steps, menu, notes);
    }

    Draft name(String value) {
        name = value;
        return this;
    }

    Draft kind(Kind value) {
        kind = value;
        return this;
    }

    Draft uses(List<Use> value) {
        uses = value;
        return this;
    }

    Draft makes(List<Make> value) {
        makes = value;
        return this;
    }

    Draft portion(Optional<Quantity> value) {
        portion = value;
        return this;
    }

    Draft keeps(Optional<Period> value) {
        keeps = value;
        return this;
    }

    Draft tested(int value) {
        tested = value;
        return this;
    }

    Draft steps(List<Step> value) {
        steps = value;
        return this;
    }

    Draft menu(Optional<MenuPrice> value) {
        menu = value;
        return this;
    }

    Draft notes(String value) {
        notes = value;
        return this;
    }

    /** The list with an element put at a place, or behind it all when the place is past the end. */
    static <T> List<T> with(List<T> list, int row, T element) {
        List<T> changed = new ArrayList<>(list);
        if (row < changed.size()) {
            changed.set(row, element);
        } else {
            changed.add(element);
        }
        return changed;
    }

    /** The list without the element at a place. */
    static <T> List<T> without(List<T> list, int row) {
        List<T> changed = new ArrayList<>(list);
        if (row < changed.size()) {
            changed.remove(row);
        }
        return changed;
    }
}
