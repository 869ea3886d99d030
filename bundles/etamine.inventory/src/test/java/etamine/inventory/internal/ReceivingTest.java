package etamine.inventory.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Progress;
import etamine.base.verb.Outcome;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.inventory.Movement;
import etamine.inventory.RefusedException;
import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.SupplierOrder;
import etamine.measures.Money;
import etamine.measures.Pack;
import etamine.measures.Ratio;
import etamine.measures.UnitPrice;
import etamine.testing.GivenItems;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ReceivingTest {
    private static final Currency EURO = Currency.getInstance("EUR");
    private final Shelf shelf = Shelf.withPlaces();

    @BeforeEach
    void giveOrders() {
        shelf.given.with(GivenItems.keeping(shelf.given.find("cream").orElseThrow(), 9));
        shelf.room.orders =
                new SetOrders(List.of(order("7", OrderState.SENT), order("6", OrderState.RECEIVED)), List.of());
    }

    private static SupplierOrder order(String id, OrderState state) {
        List<OrderLine> lines =
                List.of(line("cream", "D-104", 2, "6 x 1 l", "24.60"), line("celeriac", "V-3", 1, "10 kg", "21.00"));
        return new SupplierOrder(
                id,
                "dairy",
                LocalDate.of(2026, 11, 24),
                Optional.empty(),
                state,
                lines,
                Money.of("70.20", EURO),
                Money.zero(EURO));
    }

    private static OrderLine line(String item, String code, long packs, String pack, String price) {
        Money each = Money.of(price, EURO);
        return new OrderLine(item, code, packs, Pack.parse(pack), each, each.times(Ratio.of(packs)), List.of());
    }

    private static VerbCall call(Map<String, String> options, String... arguments) {
        return new VerbCall(List.of(arguments), options, "volatile", Path.of("."), Progress.unseen());
    }

    @Test
    void takesTheOrderInWholeWithItsPricesAndDays() {
        List<Movement> moved = shelf.room.receiveOrder("7", Map.of(), Optional.empty());
        assertThat(moved)
                .extracting(m -> m.item() + " " + m.quantity())
                .containsExactly("cream 12 l", "celeriac 10 kg");
        assertThat(moved.get(0).unitCost()).contains(UnitPrice.of("24.60", "6 l"));
        assertThat(moved.get(0).useBy()).contains(LocalDate.of(2026, 12, 3));
        assertThat(shelf.line("cream").value().orElseThrow()).hasToString("49.20");
    }

    @Test
    void notesTheOrderInTheSameTransaction() {
        long before = shelf.book.revision();
        shelf.room.receiveOrder("7", Map.of(), Optional.empty());
        assertThat(shelf.book.revision()).isEqualTo(before + 1);
        assertThat(shelf.book.shelf(SetOrders.NOTED).get("7")).isPresent();
        shelf.book.history().undo();
        assertThat(shelf.book.shelf(SetOrders.NOTED).get("7")).isEmpty();
        assertThat(shelf.line("cream").onHand().isZero()).isTrue();
    }

    @Test
    void leavesOutThePacksThatAreShort() throws VerbException {
        new ReceiveVerb(shelf.room, shelf.items).run(call(Map.of("--short", "cream=1"), "7", "celeriac=1"));
        assertThat(shelf.line("cream").onHand()).hasToString("6 l");
        assertThat(shelf.room.lines(shelf.kitchen.today())).hasSize(1);
    }

    @Test
    void refusesMoreShortPacksThanOrderedAndItemsNotOnTheOrder() {
        assertThatThrownBy(() -> shelf.room.receiveOrder("7", Map.of("cream", 3L), Optional.empty()))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("2 packs were ordered");
        assertThatThrownBy(() -> shelf.room.receiveOrder("7", Map.of("jacket", 1L), Optional.empty()))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("not on the order");
    }

    @Test
    void refusesAnOrderThatHasComeOrIsNotThere() {
        assertThatThrownBy(() -> shelf.room.receiveOrder("6", Map.of(), Optional.empty()))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("received already");
        assertThatThrownBy(() -> new ReceiveVerb(shelf.room, shelf.items).run(call(Map.of(), "99")))
                .isInstanceOfSatisfying(
                        VerbException.class,
                        refused -> assertThat(refused.outcome()).isEqualTo(Outcome.REJECTED));
    }

    @Test
    void saysSoWithoutOrders() {
        shelf.room.orders = null;
        assertThatThrownBy(() -> shelf.room.receiveOrder("7", Map.of(), Optional.empty()))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("without one");
    }
}
