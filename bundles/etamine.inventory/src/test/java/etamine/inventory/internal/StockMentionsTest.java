package etamine.inventory.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.inventory.Incoming;
import etamine.inventory.Movement;
import etamine.inventory.Outgoing;
import etamine.inventory.RefusedException;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemMentions.Mention;
import etamine.kitchen.stock.MovementKind;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.measures.UnitPrice;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StockMentionsTest {
    private final Shelf shelf = Shelf.withPlaces();
    private final StockMentions mentions = new StockMentions(shelf.journal, shelf.items, shelf.kitchen);

    StockMentionsTest() {
        shelf.given.with("root", Unit.KG).with("knob", Unit.EA, "1 ea = 800 g");
        shelf.room.receive(
                "green",
                List.of(new Incoming(
                        "root",
                        "walk-in",
                        Quantity.parse("4 kg"),
                        Optional.of(LocalDate.of(2026, 12, 1)),
                        Optional.of(UnitPrice.of("2.00", "1 kg")),
                        "L7")));
        shelf.room.take(MovementKind.WASTED, new Outgoing("root", Quantity.parse("400 g"), Optional.empty(), "soft"));
    }

    private Item item(String id) {
        return shelf.items.find(id).orElseThrow();
    }

    private int merge(String from, String into) {
        return shelf.book.write("Merge", transaction -> mentions.rewrite(transaction, item(from), item(into)));
    }

    @Test
    void saysWhatIsInStock() {
        assertThat(mentions.of("root")).containsExactly(new Mention("stock", "root", "In stock: 3.6 kg"));
        assertThat(mentions.of("cream")).isEmpty();
    }

    @Test
    void carriesEachLotOverInTheMeasureOfTheOther() {
        assertThat(merge("root", "knob")).isEqualTo(2);

        Movement in = shelf.room.movements("knob", 1).get(0);
        // 3.6 kg at 800 g each are 4.5; what 1 kg costs is said of both alike
        assertThat(in.quantity()).isEqualTo(Quantity.parse("4.5 ea"));
        assertThat(in.unitCost()).contains(UnitPrice.of("2.00", "1 kg"));
        assertThat(in.useBy()).contains(LocalDate.of(2026, 12, 1));
        assertThat(in.lot()).isEqualTo("L7");
        assertThat(shelf.stock.levels().get("root").onHand().isZero()).isTrue();
        assertThat(shelf.journal.entries("root")).hasSize(3);
    }

    @Test
    void undoBringsTheLotBackAsItWas() {
        var before = shelf.stock.levels().get("root");
        merge("root", "celeriac");
        shelf.book.history().undo();

        assertThat(shelf.stock.levels().get("root")).isEqualTo(before);
        assertThat(shelf.journal.amounts("celeriac")).isEmpty();
    }

    @Test
    void halfOfAMergeIsNotTakenBackAlone() {
        merge("root", "celeriac");

        String half = shelf.room.movements("celeriac", 1).get(0).id();

        assertThatThrownBy(() -> shelf.room.reverse(half, "slip"))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("undo the merge");
    }

    @Test
    void refusesWhatTheOtherHasNoMeasureFor() {
        assertThatThrownBy(() -> merge("root", "jacket"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("what 1 ea weighs");
        assertThat(shelf.journal.entries("jacket")).isEmpty();
    }
}
