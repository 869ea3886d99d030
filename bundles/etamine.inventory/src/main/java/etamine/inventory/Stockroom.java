package etamine.inventory;

import etamine.base.Explanation;
import etamine.kitchen.stock.MovementKind;
import etamine.kitchen.stock.Place;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Moves stock and tells what is there. Thread-safe. Every call that moves something is one transaction that can be
 * undone, gives the movements it wrote, and throws {@link RefusedException} when it cannot be done; then nothing moved.
 */
@ProviderType
public interface Stockroom {

    /** Stock against par for a day: everything that ever moved, has a par, or is on its way; by name. */
    List<StockLine> lines(LocalDate day);

    /** The same as the shelf was at an instant. */
    List<StockLine> lines(LocalDate day, Instant at);

    /** The same of what lies in one place; pars, orders and what is short stay those of the whole house. */
    List<StockLine> linesIn(LocalDate day, String place);

    /** Where an item's level comes from: its lots, what it is worth and by which price. */
    Explanation explain(String item);

    /** The latest movements of an item, newest first. */
    List<Movement> movements(String item, int atMost);

    /** Enters what is there when the book begins. */
    List<Movement> open(List<Incoming> lines);

    /** Receives goods without an order. */
    List<Movement> receive(String supplier, List<Incoming> lines);

    /**
     * Receives an order as it was sent, with price and use-by day, and notes it as received.
     *
     * @param order its number
     * @param shortPacks packs that did not come, by item
     * @param place where everything goes; empty for where each item usually is
     */
    List<Movement> receiveOrder(String order, Map<String, Long> shortPacks, Optional<String> place);

    /**
     * Takes in what comes from elsewhere in the house.
     *
     * @param from where it comes from, in words; empty when not said
     */
    List<Movement> bring(String from, List<Incoming> lines);

    /**
     * Takes something out by the door of {@code kind}: used, sold, wasted, returned, staff, given, resold or sent. More
     * than is there may be taken, since the kitchen may have used it before anybody wrote down that it came;
     * {@link #owing} then says how much.
     */
    List<Movement> take(MovementKind kind, Outgoing what);

    /** How much more of an item went out of some place than ever came in, in its count unit; empty when nothing did. */
    Optional<Quantity> owing(String item);

    /** Moves something from one place to another, keeping its lots. */
    List<Movement> move(String item, Quantity quantity, String from, String to);

    /** Makes so many batches of a recipe: takes what it uses and puts what it makes on the shelf. */
    List<Movement> make(String recipe, Ratio batches);

    /** Sets levels to what was counted; only the differences are written. */
    List<Movement> count(List<CountLine> lines);

    /** Takes a movement back by an entry of the opposite sign. */
    List<Movement> reverse(String movement, String reason);

    /** Saves a place, new or changed. */
    void savePlace(Place place);

    /** Removes a place; refused while something is there. */
    void removePlace(String id);
}
