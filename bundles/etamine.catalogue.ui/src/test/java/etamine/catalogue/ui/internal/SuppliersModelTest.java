package etamine.catalogue.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.catalogue.internal.LiveCatalogue;
import etamine.catalogue.internal.ShelfSupplierBook;
import etamine.catalogue.internal.Shelves;
import etamine.kitchen.supply.Supplier;
import etamine.measures.Unit;
import etamine.testing.GivenItems;
import etamine.testing.SetKitchen;
import etamine.testing.VolatileBook;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SuppliersModelTest {
    private final VolatileBook book = new VolatileBook();
    private final SetKitchen kitchen = SetKitchen.at("2026-11-24T09:00:00Z");
    private final Shelves shelves = new Shelves(book);
    private final ShelfSupplierBook suppliers =
            new ShelfSupplierBook(shelves, new LiveCatalogue(shelves, kitchen), kitchen);
    private final SuppliersModel model =
            new SuppliersModel(suppliers, kitchen, () -> Optional.of(new GivenItems().with("cream", Unit.L)));

    @BeforeEach
    void addDairy() {
        model.add("Hill Dairy");
    }

    private Supplier dairy() {
        return model.supplier("hill-dairy").orElseThrow();
    }

    private static OfferDraft draft(String code, String pack, String price) {
        return new OfferDraft("cream", code, "", pack, price, "", "", Optional.empty());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NAME         | Hill Farm Dairy     | Hill Farm Dairy
            EMAIL        | orders@hill.example | orders@hill.example
            DAYS         | fri, Tuesday        | TU FR
            CUT_OFF_DAYS | 2                   | 2
            CUT_OFF_TIME | 9:30                | 09:30
            MINIMUM      | 80,5                | 80.50
            FEE          | 6                   | 6.00
            """)
    void savesEachLineAndShowsItAgain(SupplierField field, String typed, String shown) {
        assertThat(model.problem("hill-dairy", field, typed)).isEmpty();
        model.save("hill-dairy", field, typed);
        assertThat(SupplierText.of(dairy(), field)).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NAME         | ''
            EMAIL        | orders
            DAYS         | TU XX
            CUT_OFF_DAYS | soon
            CUT_OFF_TIME | 25:00
            MINIMUM      | -1
            FEE          | six
            """)
    void saysWhatIsWrongWithALine(SupplierField field, String typed) {
        assertThat(model.problem("hill-dairy", field, typed)).isPresent();
    }

    @Test
    void takesTheCutOffAwayWithItsText() {
        model.save("hill-dairy", SupplierField.CUT_OFF_TIME, "22:00");
        assertThat(SupplierText.of(dairy(), SupplierField.CUT_OFF_DAYS)).isEqualTo("1");
        model.save("hill-dairy", SupplierField.CUT_OFF_TIME, "");
        assertThat(dairy().cutOff()).isEmpty();
    }

    @Test
    void listsTheNextDeliveryAndWhenItCloses() {
        assertThat(model.rows().get(0).nextText()).isEqualTo("none set");
        model.save("hill-dairy", SupplierField.DAYS, "FR");
        model.save("hill-dairy", SupplierField.CUT_OFF_TIME, "22:00");
        SupplierRow row = model.rows().get(0);
        assertThat(row.next()).contains(LocalDate.of(2026, 11, 27));
        assertThat(row.closing()).isEqualTo("Thu 26 Nov, 22:00");
    }

    @Test
    void savesAnOfferAsTypedAndShowsItAgain() {
        OfferDraft typed = new OfferDraft(
                "cream",
                "D-104",
                "6291041 500213",
                "6 x 1 l",
                "24,60",
                "5: 22,90, 10: 21",
                "9",
                Optional.of(LocalDate.of(2026, 11, 1)));
        assertThat(model.problem("hill-dairy", typed, "")).isEmpty();
        String id = model.save("hill-dairy", typed).id();
        assertThat(OfferDraft.of(model.offer(id).orElseThrow()))
                .isEqualTo(new OfferDraft(
                        "cream",
                        "D-104",
                        "6291041500213",
                        "6 x 1 l",
                        "24.60",
                        "5: 22.90, 10: 21",
                        "9",
                        Optional.of(LocalDate.of(2026, 11, 1))));
        assertThat(model.offers("hill-dairy").get(0).unitPrice()).isEqualTo("4.10 / l");
    }

    @Test
    void keepsFormerAndComingPricesBesideThePresentOne() {
        OfferDraft first = draft("D-1", "1 l", "4.00").from(LocalDate.of(2026, 10, 1));
        model.save("hill-dairy", first);
        model.save("hill-dairy", first.from(LocalDate.of(2026, 11, 1)));
        model.save("hill-dairy", first.from(LocalDate.of(2026, 12, 1)));
        assertThat(model.offers("hill-dairy"))
                .extracting(OfferRow::from)
                .containsExactly("2026-10-01, former", "2026-11-01", "2026-12-01, to come");
    }

    @Test
    void takesAPriceByWeight() {
        String id = model.save("hill-dairy", draft("D-1", "4 ea", "7.80 / kg")).id();
        assertThat(OfferDraft.price(model.offer(id).orElseThrow())).isEqualTo("7.80 / 1 kg");
        assertThat(model.offers("hill-dairy").get(0).doubtful()).isTrue();
    }

    @Test
    void saysWhatIsWrongWithAnOffer() {
        assertThat(model.problem("hill-dairy", draft("D-1", "six", "1"), "")).isPresent();
        assertThat(model.problem("hill-dairy", draft("D-1", "1 l", "cheap"), "").orElseThrow())
                .contains("24.60");
        model.save("hill-dairy", draft("D-1", "1 l", "4.20"));
        assertThat(model.problem("hill-dairy", draft("D-1", "2 l", "8"), "").orElseThrow())
                .contains("already");
        assertThat(model.problem("hill-dairy", draft("D-1", "2 l", "8"), "hill-dairy/D-1"))
                .isEmpty();
    }

    @Test
    void undoesEachChangeAsOneStep() {
        model.save("hill-dairy", draft("D-1", "1 l", "4.20"));
        model.save("hill-dairy", draft("D-2", "1 l", "4.20"), "hill-dairy/D-1", model.revision("hill-dairy/D-1"));
        book.history().undo();
        assertThat(model.offer("hill-dairy/D-1")).isPresent();
        assertThat(model.offer("hill-dairy/D-2")).isEmpty();
        model.removeSupplier("hill-dairy");
        assertThat(model.rows()).isEmpty();
        book.history().undo();
        assertThat(model.rows().get(0).offers()).isEqualTo(1);
    }

    @Test
    void givesEverySupplierAnIdOfItsOwn() {
        assertThat(model.add("Hill Dairy")).isEqualTo("hill-dairy-2");
        assertThat(model.add("Crème & Co.")).isEqualTo("creme-co");
        assertThatThrownBy(() -> model.save("hill-dairy", draft("D-1", "six", "1")))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
