package etamine.inventory.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.inventory.Incoming;
import etamine.inventory.Movement;
import etamine.kitchen.stock.MovementKind;
import etamine.kitchen.stock.StockFlow;
import etamine.kitchen.stock.StockFlow.Amount;
import etamine.measures.Quantity;
import etamine.measures.UnitPrice;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LedgerFlowsTest {
    private final Shelf shelf = Shelf.withPlaces();
    private final LedgerFlows flows = new LedgerFlows(shelf.journal, shelf.stock);

    private Map<String, StockFlow> between(String from, String until) {
        return flows.between(Instant.parse(from + "T00:00:00Z"), Instant.parse(until + "T00:00:00Z"));
    }

    private static String text(Amount amount) {
        return amount.quantity() + " "
                + amount.value().map(value -> value.rounded().toString()).orElse("?");
    }

    private void open(String item, String quantity, String cost, String per) {
        shelf.room.open(List.of(new Incoming(
                item, "", Quantity.parse(quantity), Optional.empty(), Optional.of(UnitPrice.of(cost, per)), "")));
    }

    /** OpenStax, Principles of Accounting, vol. 1 (2019), 10.2, first in first out: closing 8,955 - published. */
    @Test
    void givesThePublishedPeriodItsPurchasesAndClosingStock() {
        shelf.day("2026-07-01");
        open("jacket", "150 ea", "21.00", "1 ea");
        shelf.day("2026-07-05");
        shelf.take(MovementKind.SOLD, "jacket", "120 ea");
        shelf.day("2026-07-10");
        shelf.receive("jacket", "225 ea", "", "27.00", "1 ea");
        shelf.day("2026-07-15");
        shelf.take(MovementKind.SOLD, "jacket", "180 ea");
        shelf.day("2026-07-25");
        shelf.receive("jacket", "210 ea", "", "33.00", "1 ea");

        StockFlow july = between("2026-07-01", "2026-08-01").get("jacket");
        assertThat(text(july.opening())).isEqualTo("150 ea 3150.00");
        assertThat(text(july.by(MovementKind.RECEIVED))).isEqualTo("435 ea 13005.00");
        assertThat(text(july.closing())).isEqualTo("285 ea 8955.00");
        assertThat(text(july.by(MovementKind.SOLD))).isEqualTo("-300 ea -7200.00");
        assertThat(july.whole()).isTrue();
    }

    @Test
    void tellsWhatWasThereBeforeFromWhatCame() {
        shelf.day("2026-11-01");
        shelf.receive("cream", "4 l", "2026-12-20", "4.00", "1 l");
        shelf.day("2026-11-10");
        shelf.receive("cream", "6 l", "2026-12-24", "5.00", "1 l");
        shelf.day("2026-11-30");
        shelf.take(MovementKind.USED, "cream", "1 l");

        StockFlow middle = between("2026-11-10", "2026-11-20").get("cream");
        assertThat(text(middle.opening())).isEqualTo("4 l 16.00");
        assertThat(text(middle.by(MovementKind.RECEIVED))).isEqualTo("6 l 30.00");
        assertThat(text(middle.closing())).isEqualTo("10 l 46.00");
        assertThat(middle.doors()).containsOnlyKeys(MovementKind.RECEIVED);
    }

    @Test
    void keepsEveryDoorApart() {
        shelf.receive("cream", "10 l", "2026-12-20", "4.00", "1 l");
        shelf.take(MovementKind.STAFF, "cream", "1 l");
        shelf.take(MovementKind.GIVEN, "cream", "0.5 l");
        shelf.take(MovementKind.RESOLD, "cream", "0.25 l");
        shelf.take(MovementKind.SENT, "cream", "2 l");
        shelf.take(MovementKind.WASTED, "cream", "0.1 l");
        shelf.room.bring("the bar", List.of(Incoming.of("cream", "", Quantity.parse("1 l"))));
        shelf.room.move("cream", Quantity.parse("1 l"), "walk-in", "dry");

        StockFlow day = between("2026-11-24", "2026-11-25").get("cream");
        assertThat(text(day.by(MovementKind.STAFF))).isEqualTo("-1 l -4.00");
        assertThat(text(day.by(MovementKind.GIVEN))).isEqualTo("-0.5 l -2.00");
        assertThat(text(day.by(MovementKind.RESOLD))).isEqualTo("-0.25 l -1.00");
        assertThat(text(day.by(MovementKind.SENT))).isEqualTo("-2 l -8.00");
        assertThat(text(day.by(MovementKind.WASTED))).isEqualTo("-0.1 l -0.40");
        // without a price it comes at the average of what was there, 4.00 a litre
        assertThat(text(day.by(MovementKind.BROUGHT))).isEqualTo("1 l 4.00");
        assertThat(day.by(MovementKind.MOVED).quantity().isZero()).isTrue();
        assertThat(day.closing().quantity()).isEqualTo(Quantity.parse("7.15 l"));
    }

    @Test
    void forgetsWhatWasTakenBack() {
        shelf.receive("cream", "10 l", "2026-12-20", "4.00", "1 l");
        shelf.take(MovementKind.STAFF, "cream", "1 l");
        Movement staff = shelf.room.movements("cream", 1).get(0);
        shelf.room.reverse(staff.id(), "it was the bar");
        StockFlow day = between("2026-11-24", "2026-11-25").get("cream");
        assertThat(day.by(MovementKind.STAFF).quantity().isZero()).isTrue();
        assertThat(text(day.closing())).isEqualTo("10 l 40.00");
    }

    @Test
    void countsOpeningStockEnteredInThePeriodAsOpening() {
        open("celeriac", "6 ea", "2.10", "1 kg");
        StockFlow day = between("2026-11-24", "2026-11-25").get("celeriac");
        assertThat(text(day.opening())).isEqualTo("4.5 kg 9.45");
        assertThat(text(day.closing())).isEqualTo("4.5 kg 9.45");
        assertThat(day.doors()).isEmpty();
    }

    @Test
    void givesWhatLeftWithoutALotTheAverageOfTheTime() {
        assertThat(shelf.load("""
                        {"places": [{"id": "cellar", "name": "Cellar", "order": 3}],
                         "movements": [
                          {"id": "a", "at": "2026-11-02T08:00:00Z", "kind": "received", "item": "cream",
                           "place": "cellar", "quantity": "4 l", "unitCost": {"amount": "4.00", "per": "1 l"}},
                          {"id": "b", "at": "2026-11-03T08:00:00Z", "kind": "received", "item": "cream",
                           "place": "cellar", "quantity": "4 l", "unitCost": {"amount": "5.00", "per": "1 l"}},
                          {"id": "c", "at": "2026-11-04T08:00:00Z", "kind": "staff", "item": "cream",
                           "place": "cellar", "quantity": "2 l"}]}""")).isEmpty();
        StockFlow november = between("2026-11-01", "2026-12-01").get("cream");
        assertThat(text(november.by(MovementKind.STAFF))).isEqualTo("-2 l -9.00");
        assertThat(shelf.dump().at("/movements/2/kind").asText()).isEqualTo("staff");
        assertThat(shelf.dump().at("/movements/2/quantity").asText()).isEqualTo("2 l");
    }

    @Test
    void knowsNoValueWhereNobodyKnowsACost() {
        shelf.receive("cream", "2 l", "", "", "");
        StockFlow day = between("2026-11-24", "2026-11-25").get("cream");
        assertThat(text(day.by(MovementKind.RECEIVED))).isEqualTo("2 l ?");
        assertThat(text(day.closing())).isEqualTo("2 l ?");
    }
}
