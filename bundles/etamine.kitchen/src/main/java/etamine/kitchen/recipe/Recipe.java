package etamine.kitchen.recipe;

import etamine.measures.Quantity;
import java.time.Period;
import java.util.List;
import java.util.Optional;

/**
 * A process: it uses some things and makes one or more.
 *
 * @param id its identifier
 * @param name as on the card
 * @param kind what it is for
 * @param uses what one batch takes
 * @param makes what one batch gives; the first is the main one
 * @param portion the size of one portion of the main thing made
 * @param steps the work
 * @param menu how it is sold, if it is
 * @param making how a batch behaves
 * @param standing how far it is to be trusted
 * @param drinks what is poured with it
 * @param notes free text; empty when none
 * @param photo the id of the photo of what it makes
 */
public record Recipe(
        String id,
        String name,
        Kind kind,
        List<Use> uses,
        List<Make> makes,
        Optional<Quantity> portion,
        List<Step> steps,
        Optional<MenuPrice> menu,
        Making making,
        Standing standing,
        List<PairedDrink> drinks,
        String notes,
        Optional<String> photo) {

    /** Copies the lists. */
    public Recipe {
        uses = List.copyOf(uses);
        makes = List.copyOf(makes);
        steps = List.copyOf(steps);
        drinks = List.copyOf(drinks);
    }

    /** A recipe without a photo. */
    public Recipe(
            String id,
            String name,
            Kind kind,
            List<Use> uses,
            List<Make> makes,
            Optional<Quantity> portion,
            List<Step> steps,
            Optional<MenuPrice> menu,
            Making making,
            Standing standing,
            List<PairedDrink> drinks,
            String notes) {
        this(id, name, kind, uses, makes, portion, steps, menu, making, standing, drinks, notes, Optional.empty());
    }

    /** A recipe of which nothing more is said than how long it keeps and how often it was tested. */
    public Recipe(
            String id,
            String name,
            Kind kind,
            List<Use> uses,
            List<Make> makes,
            Optional<Quantity> portion,
            Optional<Period> keeps,
            int tested,
            List<Step> steps,
            Optional<MenuPrice> menu,
            String notes) {
        this(
                id,
                name,
                kind,
                uses,
                makes,
                portion,
                steps,
                menu,
                Making.PLAIN.withKeeps(keeps),
                Standing.DRAFT.withTested(tested),
                List.of(),
                notes);
    }

    /** How long the main thing keeps; a kitchen's own figure, never a safety limit. */
    public Optional<Period> keeps() {
        return making.keeps();
    }

    /** How often it was made with the same result. */
    public int tested() {
        return standing.tested();
    }

    /** The same under another identifier. */
    public Recipe withId(String changed) {
        return new Recipe(
                changed, name, kind, uses, makes, portion, steps, menu, making, standing, drinks, notes, photo);
    }

    /** The same under another name. */
    public Recipe withName(String changed) {
        return new Recipe(id, changed, kind, uses, makes, portion, steps, menu, making, standing, drinks, notes, photo);
    }

    /** The same for another purpose. */
    public Recipe withKind(Kind changed) {
        return new Recipe(id, name, changed, uses, makes, portion, steps, menu, making, standing, drinks, notes, photo);
    }

    /** The same taking other things. */
    public Recipe withUses(List<Use> changed) {
        return new Recipe(id, name, kind, changed, makes, portion, steps, menu, making, standing, drinks, notes, photo);
    }

    /** The same giving other things. */
    public Recipe withMakes(List<Make> changed) {
        return new Recipe(id, name, kind, uses, changed, portion, steps, menu, making, standing, drinks, notes, photo);
    }

    /** The same with another portion. */
    public Recipe withPortion(Optional<Quantity> changed) {
        return new Recipe(id, name, kind, uses, makes, changed, steps, menu, making, standing, drinks, notes, photo);
    }

    /** The same with other steps. */
    public Recipe withSteps(List<Step> changed) {
        return new Recipe(id, name, kind, uses, makes, portion, changed, menu, making, standing, drinks, notes, photo);
    }

    /** The same sold otherwise. */
    public Recipe withMenu(Optional<MenuPrice> changed) {
        return new Recipe(id, name, kind, uses, makes, portion, steps, changed, making, standing, drinks, notes, photo);
    }

    /** The same with batches that behave otherwise. */
    public Recipe withMaking(Making changed) {
        return new Recipe(id, name, kind, uses, makes, portion, steps, menu, changed, standing, drinks, notes, photo);
    }

    /** The same, otherwise trusted. */
    public Recipe withStanding(Standing changed) {
        return new Recipe(id, name, kind, uses, makes, portion, steps, menu, making, changed, drinks, notes, photo);
    }

    /** The same with other drinks. */
    public Recipe withDrinks(List<PairedDrink> changed) {
        return new Recipe(id, name, kind, uses, makes, portion, steps, menu, making, standing, changed, notes, photo);
    }

    /** The same with other notes. */
    public Recipe withNotes(String changed) {
        return new Recipe(id, name, kind, uses, makes, portion, steps, menu, making, standing, drinks, changed, photo);
    }

    /** The same with another photo, or none. */
    public Recipe withPhoto(Optional<String> changed) {
        return new Recipe(id, name, kind, uses, makes, portion, steps, menu, making, standing, drinks, notes, changed);
    }
}
