package etamine.inventory.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.inventory.CountLine;
import etamine.inventory.Incoming;
import etamine.inventory.Movement;
import etamine.inventory.Outgoing;
import etamine.inventory.RefusedException;
import etamine.inventory.RefusedException.Reason;
import etamine.inventory.StockLine;
import etamine.kitchen.par.Par;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.Dimension;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StockroomTest {
    private final Shelf shelf = Shelf.withPlaces();

    @Test
    void takesWhatExpiresFirstAndThenWhatCameFirst() {
        shelf.receive("cream", "2 l", "2026-12-05", "4.00", "1 l");
        shelf.receive("cream", "2 l", "2026-12-01", "4.20", "1 l");
        shelf.receive("cream", "2 l", "", "4.10", "1 l");
        shelf.take(MovementKind.USED, "cream", "2.5 l");
        assertThat(shelf.lots("cream")).isEqualTo("[walk-in 1.5 l 2026-12-05, walk-in 2 l]");
    }

    @Test
    void writesOneMovementForEachLotItTakesFrom() {
        shelf.receive("cream", "1 l", "2026-12-01", "", "");
        shelf.receive("cream", "1 l", "2026-12-02", "", "");
        List<Movement> moved = shelf.room.take(
                MovementKind.WASTED, new Outgoing("cream", Quantity.parse("1.5 l"), Optional.empty(), "split"));
        assertThat(moved)
                .extracting(m -> m.quantity() + " " + m.useBy().orElseThrow() + " " + m.note())
                .containsExactly("-1 l 2026-12-01 split", "-0.5 l 2026-12-02 split");
    }

    @Test
    void goesBelowZeroRatherThanForgettingWhatWasUsed() {
        shelf.receive("cream", "1 l", "", "", "");
        shelf.take(MovementKind.USED, "cream", "1.5 l");
        assertThat(shelf.line("cream").onHand()).isEqualTo(Quantity.parse("-0.5 l"));
        assertThat(new StockCheck(shelf.stock, shelf.items, shelf.places).check())
                .extracting(problem -> problem.code() + " " + problem.where())
                .containsExactly("negative-stock movements/cream");
    }

    @Test
    void convertsAnyUnitByTheItemsMeasures() {
        shelf.receive("celeriac", "4 ea", "", "", "");
        assertThat(shelf.line("celeriac").onHand()).isEqualTo(Quantity.parse("3 kg"));
    }

    @Test
    void refusesAQuantityWithoutAMeasureAndNamesIt() {
        assertThatThrownBy(() -> shelf.receive("cream", "2 ea", "", "", ""))
                .isInstanceOfSatisfying(RefusedException.class, refused -> {
                    assertThat(refused.reason()).isEqualTo(Reason.MISSING_EQUIVALENCE);
                    assertThat(refused.missing().orElseThrow()).startsWith("Add ");
                });
        assertThat(shelf.journal.amounts()).isEmpty();
    }

    @Test
    void refusesUnknownItemsAndPlaces() {
        assertThatThrownBy(() -> shelf.receive("moonmilk", "1 l", "", "", ""))
                .isInstanceOfSatisfying(
                        RefusedException.class,
                        refused -> assertThat(refused.reason()).isEqualTo(Reason.UNKNOWN_ITEM));
        assertThatThrownBy(() -> shelf.room.open(List.of(Incoming.of("cream", "attic", Quantity.parse("1 l")))))
                .isInstanceOfSatisfying(
                        RefusedException.class,
                        refused -> assertThat(refused.reason()).isEqualTo(Reason.UNKNOWN_PLACE));
    }

    @Test
    void keepsLotsWhenTheyMove() {
        shelf.receive("cream", "2 l", "2026-12-01", "4.20", "1 l");
        shelf.room.move("cream", Quantity.parse("0.5 l"), "walk-in", "dry");
        assertThat(shelf.lots("cream")).isEqualTo("[dry 0.5 l 2026-12-01, walk-in 1.5 l 2026-12-01]");
        assertThat(shelf.line("cream").value().orElseThrow()).hasToString("8.40");
    }

    @Test
    void takesBothHalvesOfAMoveBack() {
        shelf.receive("cream", "2 l", "2026-12-01", "", "");
        List<Movement> moved = shelf.room.move("cream", Quantity.parse("0.5 l"), "walk-in", "dry");
        assertThat(shelf.room.reverse(moved.get(1).id(), "wrong item")).hasSize(2);
        assertThat(shelf.lots("cream")).isEqualTo("[walk-in 2 l 2026-12-01]");
    }

    @Test
    void countsWhatIsThereWhenItIsWritten() throws InterruptedException {
        shelf.receive("cream", "2 l", "", "", "");
        LotKey lot = new LotKey("walk-in", "", "", "", "2026-11-24T09:00:00Z", Dimension.VOLUME);
        Draft delivery = new Draft(MovementKind.RECEIVED, "cream", lot, 500_000, Json.empty());
        Thread counting = new Thread(() -> shelf.room.count(
                List.of(new CountLine("cream", "walk-in", Quantity.parse("1 l"), Optional.empty(), ""))));
        shelf.book.write("Something else", transaction -> {
            counting.start();
            awaitWaiting(counting);
            transaction.append(StockJournal.LEDGER, delivery.at(shelf.clock.instant()));
            return true;
        });
        counting.join(10_000);
        assertThat(shelf.line("cream").onHand()).isEqualTo(Quantity.parse("1 l"));
    }

    private static void awaitWaiting(Thread thread) {
        long end = System.nanoTime() + 10_000_000_000L;
        while (thread.getState() != Thread.State.WAITING && System.nanoTime() < end) {
            Thread.onSpinWait();
        }
    }

    @Test
    void tellsTheLevelAsItWas() {
        shelf.receive("cream", "2 l", "", "", "");
        Instant between = shelf.clock.instant();
        shelf.day("2026-11-25");
        shelf.take(MovementKind.USED, "cream", "2 l");
        assertThat(shelf.line("cream").onHand().isZero()).isTrue();
        assertThat(shelf.stock.levels(between).get("cream").onHand()).isEqualTo(Quantity.parse("2 l"));
        assertThat(shelf.stock.levels(between.minusSeconds(1))).isEmpty();
    }

    @Test
    void undoesAReceiptAsAWholeAndDoesItAgain() {
        shelf.room.receive(
                "dairy",
                List.of(
                        Incoming.of("cream", "walk-in", Quantity.parse("2 l")),
                        Incoming.of("celeriac", "dry", Quantity.parse("1 kg"))));
        shelf.book.history().undo();
        assertThat(shelf.room.lines(shelf.kitchen.today()))
                .allMatch(line -> line.onHand().isZero());
        shelf.book.history().redo();
        assertThat(shelf.line("cream").onHand()).isEqualTo(Quantity.parse("2 l"));
        assertThat(Standing.of(shelf.journal.entries("cream"))).hasSize(1);
    }

    @Test
    void takesAMovementBackOnlyOnce() {
        shelf.receive("cream", "2 l", "", "", "");
        String id = shelf.room.movements("cream", 1).get(0).id();
        assertThat(shelf.room.reverse(id, "typed twice"))
                .singleElement()
                .satisfies(reversal -> assertThat(reversal.quantity()).isEqualTo(Quantity.parse("-2 l")));
        assertThatThrownBy(() -> shelf.room.reverse(id, "again"))
                .isInstanceOfSatisfying(
                        RefusedException.class,
                        refused -> assertThat(refused.reason()).isEqualTo(Reason.MOVEMENT));
    }

    @Test
    void isShortOfParByWhatIsNeitherThereNorOnItsWay() {
        shelf.report.pars = () -> Map.of(
                "cream",
                new Par(
                        "cream",
                        Quantity.parse("8 l"),
                        Map.of(DayOfWeek.FRIDAY, Quantity.parse("12000 ml")),
                        Optional.empty(),
                        Optional.empty()));
        shelf.report.orders = SetOrders.coming("cream", "6 l");
        shelf.receive("cream", "1.5 l", "", "", "");
        StockLine tuesday = shelf.line("cream");
        // order = par - on hand - on order - common practice: 8 - 1.5 - 6 = 0.5
        assertThat(tuesday.shortBy()).contains(Quantity.parse("0.5 l"));
        StockLine friday = shelf.room.lines(LocalDate.of(2026, 11, 27)).get(0);
        assertThat(friday.shortBy()).contains(Quantity.parse("4.5 l"));
        shelf.receive("cream", "3 l", "", "", "");
        assertThat(shelf.line("cream").shortBy()).contains(Quantity.parse("0 l"));
    }

    @Test
    void keepsAnItemThatIsCountedInItsOwnWord() {
        shelf.given.with("parsley", Unit.word("bunch"), "1 bunch = 60 g");
        shelf.receive("parsley", "2 bunch", "", "", "");
        shelf.take(MovementKind.USED, "parsley", "30 g");
        assertThat(shelf.line("parsley").onHand()).isEqualTo(Quantity.parse("1.5 bunch"));
    }

    @Test
    void readsTheSameLevelsFromTheLedgerAsItKeptByCommits() {
        shelf.receive("cream", "2 l", "2026-12-01", "4.20", "1 l");
        shelf.receive("jacket", "5 ea", "", "", "");
        shelf.take(MovementKind.USED, "cream", "0.5 l");
        shelf.take(MovementKind.SOLD, "jacket", "5 ea");
        StockJournal afresh = new StockJournal(shelf.book);
        assertThat(afresh.amounts()).isEqualTo(shelf.journal.amounts());
        assertThat(afresh.amounts().keySet()).containsExactly("cream", "jacket");
    }

    @Test
    void removesAPlaceOnlyWhenNothingIsThere() {
        shelf.receive("cream", "2 l", "", "", "");
        assertThatThrownBy(() -> shelf.room.removePlace("walk-in")).isInstanceOf(RefusedException.class);
        shelf.room.removePlace("dry");
        assertThat(shelf.stock.places()).extracting(place -> place.id()).containsExactly("walk-in");
    }

    @Test
    void callsWhatIsUnderParAndWhatIsAtItsMarkedDay() {
        shelf.report.pars = () -> Map.of(
                "celeriac", new Par("celeriac", Quantity.parse("3 kg"), Map.of(), Optional.empty(), Optional.empty()));
        shelf.receive("cream", "1 l", "2026-11-23", "", "");
        shelf.receive("cream", "1 l", "2026-11-24", "", "");
        shelf.receive("cream", "1 l", "2026-11-25", "", "");
        StockWatch watch = new StockWatch(shelf.report, shelf.items, shelf.places, shelf.kitchen);
        assertThat(watch.calls(shelf.clock.instant()))
                .extracting(call -> call.urgency() + " " + call.id())
                .containsExactly(
                        "NOW use-by/cream/walk-in/2026-11-23",
                        "TODAY use-by/cream/walk-in/2026-11-24",
                        "TODAY under-par/celeriac");
        assertThat(watch.calls(shelf.clock.instant()).get(0).text()).contains("local rules decide");
        assertThat(watch.marks(LocalDate.of(2026, 11, 24), LocalDate.of(2026, 11, 30)))
                .extracting(mark -> mark.day() + " " + mark.text())
                .containsExactly("2026-11-24 Cream, last day", "2026-11-25 Cream, last day");
    }
}
