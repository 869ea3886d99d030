package etamine.book.internal.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.house.House;
import etamine.kitchen.house.Kitchen;
import etamine.measures.MeasureStyle;
import etamine.storage.BookException;
import etamine.testing.SetClock;
import etamine.testing.VolatileBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackagedDemoTest {
    private static final String FORM = """
            {"etamine": "1", "demo": {"today": "2026-11-24"},
             "kitchen": {"name": "L", "currency": "EUR", "zone": "Europe/Dublin"},
             "pantry": [{"id": "on-2026-11-20", "since": "2026-11-20", "x-at": "2026-11-20T18:00:00Z"}]}
            """;

    @TempDir
    Path folder;

    private final VolatileBook book = new VolatileBook();
    private final BookExchange exchange = new BookExchange(book, List.of(new Pantry(book, "pantry")));
    private final SetClock clock = SetClock.at("2027-06-20T22:30:00Z");

    /** Sunday 20 June 2027, 23:30 in Dublin, is in the week from Monday 14 June: 29 weeks after that of 24 November. */
    @Test
    void movesDatesAndMomentsByWholeWeeksKeepingTheTimeOfDay() {
        ObjectNode form = (ObjectNode) Json.parse(FORM);
        PackagedDemo.move(form, LocalDate.of(2027, 6, 20));
        assertThat(form.has("demo")).isFalse();
        assertThat(form.at("/pantry/0/since").asText()).isEqualTo("2027-06-11");
        assertThat(form.at("/pantry/0/x-at").asText()).isEqualTo("2027-06-11T17:00:00Z");
        assertThat(form.at("/pantry/0/id").asText()).isEqualTo("on-2026-11-20");
    }

    @Test
    void leavesDatesAloneInTheirOwnWeek() {
        ObjectNode form = (ObjectNode) Json.parse(FORM);
        PackagedDemo.move(form, LocalDate.of(2026, 11, 29));
        assertThat(form.at("/pantry/0/since").asText()).isEqualTo("2026-11-20");
    }

    @Test
    void fillsTheOpenBook() throws IOException {
        demo().into(book);
        assertThat(exchange.dump().at("/pantry/0/since").asText()).isEqualTo("2027-06-11");
        assertThat(exchange.dump().has("demo")).isFalse();
    }

    @Test
    void refusesABookThatHasData() throws IOException {
        demo().into(book);
        long before = book.revision();
        assertThatExceptionOfType(BookException.class)
                .isThrownBy(() -> demo().into(book))
                .withMessageContaining("make a new book");
        assertThat(book.revision()).isEqualTo(before);
    }

    private PackagedDemo demo() throws IOException {
        return new PackagedDemo(Files.writeString(folder.resolve("demo.json"), FORM), exchange, new Kitchen() {
            @Override
            public House house() {
                return new House("", Currency.getInstance("EUR"), clock.getZone(), MeasureStyle.METRIC);
            }

            @Override
            public void change(House house) {
                throw new AssertionError("the demo does not change settings but through its file");
            }

            @Override
            public Clock clock() {
                return clock.withZone(ZoneId.of("Europe/Dublin"));
            }
        });
    }
}
