package etamine.book.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import etamine.kitchen.allergen.DeclarationList;
import etamine.kitchen.house.House;
import etamine.measures.MeasureStyle;
import etamine.storage.BookException;
import etamine.storage.Document;
import etamine.testing.VolatileBook;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Currency;
import org.junit.jupiter.api.Test;

class BookKitchenTest {
    private static final House LANTERN = new House(
            "Lantern", Currency.getInstance("JPY"), ZoneId.of("Asia/Tokyo"), MeasureStyle.US, DeclarationList.FSANZ);

    private final VolatileBook book = new VolatileBook();
    private final FakeContext framework = new FakeContext();

    @Test
    void remembersTheSettings() {
        new BookKitchen(book, framework.context()).change(LANTERN);
        assertThat(new BookKitchen(book, framework.context()).house()).isEqualTo(LANTERN);
    }

    @Test
    void changingTheSettingsCanBeUndone() {
        BookKitchen kitchen = new BookKitchen(book, framework.context());
        House before = kitchen.house();
        kitchen.change(LANTERN);
        assertThat(book.history().undo()).contains("Change the kitchen's settings");
        assertThat(kitchen.house()).isEqualTo(before);
    }

    @Test
    void keepsMembersItDoesNotKnow() {
        book.write("x", t -> t.save("kitchen", "kitchen", Document.ANY, "{\"name\":\"A\",\"x-note\":\"mine\"}"));
        new BookKitchen(book, framework.context()).change(LANTERN);
        assertThat(book.shelf("kitchen").get("kitchen").orElseThrow().json())
                .isEqualTo(
                        "{\"name\":\"Lantern\",\"x-note\":\"mine\",\"currency\":\"JPY\",\"zone\":\"Asia/Tokyo\",\"measures\":\"us\",\"allergenList\":\"fsanz\"}");
    }

    @Test
    void theClockStandsStillAtTheGivenInstantInTheHousesZone() {
        framework.properties.put("etamine.clock", "2026-11-24T20:00:00Z");
        BookKitchen kitchen = new BookKitchen(book, framework.context());
        kitchen.change(LANTERN);
        assertThat(kitchen.today()).isEqualTo(LocalDate.of(2026, 11, 25));
        assertThat(kitchen.clock().getZone()).isEqualTo(ZoneId.of("Asia/Tokyo"));
    }

    @Test
    void refusesAClockThatIsNoMoment() {
        framework.properties.put("etamine.clock", "yesterday");
        assertThatExceptionOfType(BookException.class)
                .isThrownBy(() -> new BookKitchen(book, framework.context()))
                .withMessageContaining("2026-11-24T09:00:00Z");
    }
}
