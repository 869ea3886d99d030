package etamine.inventory.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.inventory.Incoming;
import etamine.inventory.Outgoing;
import etamine.inventory.internal.JournalStockroom;
import etamine.inventory.internal.KnownItems;
import etamine.inventory.internal.LotStock;
import etamine.inventory.internal.Movers;
import etamine.inventory.internal.PlaceShelf;
import etamine.inventory.internal.ShelfReport;
import etamine.inventory.internal.StockJournal;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import etamine.testing.GivenItems;
import etamine.testing.SetKitchen;
import etamine.testing.VolatileBook;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class StockModelTest {
    private final VolatileBook book = new VolatileBook();
    private final SetKitchen kitchen = SetKitchen.at("2026-11-24T09:00:00Z");
    private final KnownItems known = new KnownItems();
    private final StockJournal journal = new StockJournal(book);
    private final PlaceShelf shelf = new PlaceShelf(book, journal);
    private final LotStock stock = new LotStock(journal, shelf, known, kitchen);
    private final JournalStockroom room = new JournalStockroom(
            journal, new ShelfReport(stock, known, shelf), new Movers(journal, known, shelf), known, shelf, kitchen);
    private final GivenItems items = new GivenItems().with("cream", Unit.L).with("parsley", Unit.G, "1 bunch = 60 g");
    private final StockModel model = new StockModel(room, stock, kitchen, () -> Optional.of(items));
    private final PlacesModel places = new PlacesModel(model);

    @BeforeEach
    void givePlaces() {
        places.rows();
        assertThat(places.save(0, "Walk-in", "")).isEmpty();
        assertThat(places.save(1, "Dry store", "")).isEmpty();
    }

    private void receive(String item, String place, String quantity, String useBy) {
        room.receive(
                "",
                List.of(new Incoming(
                        item,
                        place,
                        Quantity.parse(quantity),
                        Optional.of(LocalDate.parse(useBy)),
                        Optional.of(UnitPrice.of("4.20", "1 l")),
                        "")));
    }

    private StockRow row(Optional<String> place) {
        return model.rows(kitchen.today(), place).get(0);
    }

    @Test
    void showsStockWithItsValueAndNextDay() {
        receive("cream", "walk-in", "2 l", "2026-11-24");
        StockRow row = row(Optional.empty());
        assertThat(row.onHand()).isEqualTo("2 l");
        assertThat(row.value()).isEqualTo("8.40");
        assertThat(row.due()).isTrue();
        assertThat(row.par()).isEmpty();
        assertThat(model.lots(row))
                .extracting(lot -> lot.place() + " " + lot.quantity() + " " + lot.cost())
                .containsExactly("Walk-in 2 l 4.20 / l");
    }

    @Test
    void showsOnePlaceWithWhatThatIsWorth() {
        receive("cream", "walk-in", "2 l", "2026-12-01");
        receive("cream", "dry-store", "1 l", "2026-12-02");
        StockRow row = row(Optional.of("dry-store"));
        assertThat(row.onHand()).isEqualTo("1 l");
        assertThat(row.value()).isEqualTo("4.20");
        assertThat(row.nextUseBy()).isEqualTo("Wed 2 Dec");
    }

    @Test
    void readsANumberAloneInTheUnitBesideIt() {
        assertThat(model.quantity("cream", "1,5", Unit.L)).isEqualTo(Quantity.parse("1.5 l"));
        assertThat(model.quantity("cream", "1 1/2", Unit.ML)).isEqualTo(Quantity.parse("1 1/2 ml"));
        assertThat(model.quantity("cream", "250 ml", Unit.L)).isEqualTo(Quantity.parse("250 ml"));
        assertThat(model.quantity("parsley", "2 bunches")).isEqualTo(Quantity.parse("2 bunch"));
        assertThatThrownBy(() -> model.quantity("cream", "some")).isInstanceOf(MeasureException.class);
        assertThatThrownBy(() -> model.quantity("cream", "3")).isInstanceOf(MeasureException.class);
    }

    @Test
    void countsANumberAloneInTheUnitThatIsShown() {
        room.receive("", List.of(Incoming.of("parsley", "walk-in", Quantity.parse("0.078 kg"))));
        CountModel count = new CountModel(model, "walk-in");
        assertThat(count.lines().get(0).expected()).isEqualTo("78 g");
        count.type("parsley", "70");
        count.finish();
        assertThat(row(Optional.empty()).onHand()).isEqualTo("70 g");
    }

    @Test
    void takesAMovementBackOnce() {
        receive("cream", "walk-in", "2 l", "2026-12-01");
        MovementRow receipt = model.movements("cream").get(0);
        assertThat(receipt.standing()).isTrue();
        model.takeBack(receipt.id());
        assertThat(model.movements("cream")).noneMatch(MovementRow::standing);
        assertThat(model.movements("cream")).extracting(MovementRow::kind).contains("taken back", "received");
    }

    @Test
    void writesACountAsOneStepAndOnlyWhatWasTyped() {
        receive("cream", "walk-in", "2 l", "2026-12-01");
        room.receive("", List.of(Incoming.of("parsley", "walk-in", Quantity.parse("300 g"))));
        CountModel count = new CountModel(model, "walk-in");
        assertThat(count.lines()).extracting(CountModel.Line::expected).containsExactlyInAnyOrder("2 l", "300 g");
        assertThat(count.type("cream", "1.5")).isEmpty();
        assertThat(count.counted()).isEqualTo(1);
        assertThat(count.finish()).isEqualTo(1);
        assertThat(row(Optional.empty()).onHand()).isEqualTo("1.5 l");
        book.history().undo();
        assertThat(row(Optional.empty()).onHand()).isEqualTo("2 l");
    }

    @Test
    void keepsALineThatCannotBeReadAndNamesIt() {
        receive("cream", "walk-in", "2 l", "2026-12-01");
        CountModel count = new CountModel(model, "walk-in");
        assertThat(count.type("cream", "lots")).isPresent();
        assertThat(count.faulty()).containsExactly("cream");
        assertThat(count.type("cream", "")).isEmpty();
        assertThat(count.faulty()).isEmpty();
        assertThat(count.counted()).isZero();
    }

    @Test
    void countsAnItemThatWasNeverThere() {
        CountModel count = new CountModel(model, "walk-in");
        count.add("cream", "Cream");
        count.type("cream", "3");
        assertThat(count.finish()).isEqualTo(1);
        assertThat(row(Optional.of("walk-in")).onHand()).isEqualTo("3 l");
    }

    @Test
    void editsPlacesLineByLine() {
        assertThat(places.rows()).containsExactly(List.of("Walk-in", "1"), List.of("Dry store", "2"));
        assertThat(places.save(0, "Cold room", "5")).isEmpty();
        assertThat(places.rows()).containsExactly(List.of("Dry store", "2"), List.of("Cold room", "5"));
        assertThat(model.placeName("walk-in")).isEqualTo("Cold room");
        assertThat(places.save(0, "Dry store", "first")).isPresent();
        receive("cream", "dry-store", "1 l", "2026-12-01");
        assertThat(places.save(0, "", "").orElseThrow()).contains("move it first");
        room.take(MovementKind.USED, new Outgoing("cream", Quantity.parse("1 l"), Optional.empty(), ""));
        assertThat(places.save(0, "", "")).isEmpty();
        assertThat(places.rows()).hasSize(1);
    }

    @Test
    void hasNoOrdersToReceiveWithoutAModuleThatKeepsThem() {
        OrderModel orders = new OrderModel(model, Optional::empty);
        assertThat(orders.awaited()).isEmpty();
        assertThat(orders.lines("7")).isEmpty();
    }
}
