package etamine.ordering.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbException;
import etamine.kitchen.today.Call;
import etamine.kitchen.today.DayMark;
import etamine.measures.Unit;
import etamine.ordering.internal.SetKitchenware.SetItems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrderingFrontsTest {
    private static final LocalDate TUESDAY = LocalDate.of(2026, 11, 24);

    private final Bench bench = Bench.withDairy();
    private final OrderCalls calls =
            new OrderCalls(bench.book, bench.kitchen, bench.desk, bench.orders, bench.neighbours);

    @TempDir
    Path folder;

    @Test
    void plansOnTheConsoleInTheExchangeForm() throws VerbException {
        Report report = bench.run(bench.planVerb, folder, Map.of());

        assertThat(report.outcome()).isEqualTo(Outcome.DONE);
        Map<?, ?> json = (Map<?, ?>) report.json();
        assertThat(json.get("total")).isEqualTo("60.60");
        assertThat(json.get("bound")).isEqualTo(Optional.empty());
        assertThat(json.get("gapPercent")).isEqualTo(Optional.empty());
        assertThat(json.get("method")).isEqualTo("par");
        assertThat(json.get("byHand")).isEqualTo(Map.of("total", "60.60"));
        Map<?, ?> order = (Map<?, ?>) ((List<?>) json.get("orders")).get(0);
        assertThat(order.get("orderBy")).isEqualTo("2026-11-26T22:00:00Z");
        Map<?, ?> line = (Map<?, ?>) ((List<?>) order.get("lines")).get(1);
        assertThat(line.get("pack")).isEqualTo("6 x 1 l");
        assertThat(line.get("price")).isEqualTo("24.60");
        assertThat((List<?>) line.get("why")).isNotEmpty();
        assertThat(report.lines()).contains("Total 60.60 EUR");
    }

    @Test
    void saysThatSomethingIsLeftShort() throws VerbException {
        bench.pars.set(Bench.par("caviar", "1 kg"));

        Report report = bench.run(bench.planVerb, folder, Map.of());

        assertThat(report.outcome()).isEqualTo(Outcome.LOOK);
        assertThat(((Map<?, ?>) report.json()).get("shortfalls"))
                .hasToString("[{item=caviar, date=2026-11-24, quantity=1000 g, "
                        + "why=[It stays below its par., Nobody offers it on 2026-11-24.]}]");
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            --method, best
            --method, magic
            --days,   0
            --days,   many
            --from,   Friday
            """)
    void refusesWrongCalls(String option, String value) {
        assertThatThrownBy(() -> bench.run(bench.planVerb, folder, Map.of(option, value)))
                .isInstanceOfSatisfying(
                        VerbException.class,
                        wrong -> assertThat(wrong.outcome()).isEqualTo(Outcome.WRONG_CALL));
    }

    @Test
    void draftsAndIssuesFromTheConsole() throws Exception {
        Report drafts = bench.run(bench.orderVerb, folder, Map.of());
        assertThat(drafts.json().toString()).contains("id=2026-W48-dairy-1", "state=draft", "files=[]");

        Report issued = bench.run(bench.orderVerb, folder, Map.of("--issue", "true"));
        assertThat(issued.outcome()).isEqualTo(Outcome.DONE);
        assertThat(issued.json().toString()).contains("state=sent", "2026-W48-dairy-1.pdf");
        assertThat(Files.exists(folder.resolve("orders/2026-W48-dairy-1.csv"))).isTrue();

        assertThat(bench.run(bench.orderVerb, folder, Map.of("--issue", "true")).lines())
                .containsExactly("Nothing has to be ordered.");
    }

    @Test
    void issuesDraftsAsSomebodyLeftThem() throws VerbException {
        bench.run(bench.orderVerb, folder, Map.of());
        bench.run(bench.ordersVerb, folder, Map.of(), "2026-W48-dairy-1", "D-104", "5");

        Report issued = bench.run(bench.orderVerb, folder, Map.of("--issue", "true", "--folder", "out"));

        assertThat(issued.json().toString()).contains("packs=5", "amount=123.00");
        assertThat(folder.resolve("out")).isDirectoryContaining("glob:**.pdf");
    }

    @Test
    void changesALineByItsItemAndSaysWhenThereIsNone() throws VerbException {
        bench.run(bench.orderVerb, folder, Map.of());
        bench.run(bench.ordersVerb, folder, Map.of(), "2026-W48-dairy-1", "butter", "4");

        assertThat(bench.orders
                        .find("2026-W48-dairy-1")
                        .orElseThrow()
                        .lines()
                        .get(0)
                        .packs())
                .isEqualTo(4);
        assertThatThrownBy(() -> bench.run(bench.ordersVerb, folder, Map.of(), "2026-W48-dairy-1", "none", "4"))
                .isInstanceOf(VerbException.class);
    }

    @Test
    void saysThatUblComesLater() {
        assertThatThrownBy(() -> bench.run(bench.orderVerb, folder, Map.of("--ubl", "true")))
                .hasMessage("A later version writes UBL orders; this one writes CSV and PDF.");
    }

    @Test
    void listsAndShowsOrders() throws VerbException {
        assertThat(bench.run(bench.ordersVerb, folder, Map.of()).lines()).containsExactly("There are no orders.");
        bench.run(bench.orderVerb, folder, Map.of());

        assertThat(bench.run(bench.ordersVerb, folder, Map.of()).lines()).hasSize(2);
        assertThat(bench.run(bench.ordersVerb, folder, Map.of(), "2026-W48-dairy-1")
                        .lines())
                .contains("Goods 54.60, fee 6.00");
        bench.run(bench.ordersVerb, folder, Map.of("--discard", "true"), "2026-W48-dairy-1");
        assertThat(bench.orders.all()).isEmpty();
        assertThatThrownBy(() -> bench.run(bench.ordersVerb, folder, Map.of(), "none"))
                .isInstanceOf(VerbException.class);
    }

    @Test
    void setsAndRemovesParsFromTheConsole() throws VerbException {
        Verb pars = new ParsVerb(bench.pars, bench.neighbours);
        bench.run(pars, folder, Map.of(), "cream", "9 l");
        assertThat(bench.pars.all().get("cream").par()).hasToString("9 l");

        bench.run(pars, folder, Map.of("--remove", "true"), "cream");
        assertThat(bench.pars.all()).doesNotContainKey("cream");

        assertThatThrownBy(() -> bench.run(pars, folder, Map.of(), "caviar", "9 l"))
                .isInstanceOf(VerbException.class);
        assertThatThrownBy(() -> bench.run(pars, folder, Map.of(), "butter", "9 l"))
                .isInstanceOf(VerbException.class);
    }

    @Test
    void callsForACutOffWithLinesAndValue() {
        bench.clock.set(Instant.parse("2026-11-26T19:50:00Z"));

        List<Call> found = calls.calls(bench.clock.instant());

        assertThat(found).hasSize(1);
        assertThat(found.get(0).text()).isEqualTo("The dairy order closes in 2 h 10 min: 2 lines, 54.60");
        assertThat(found.get(0).urgency()).isEqualTo(Call.Urgency.NOW);
        assertThat(found.get(0).id()).isEqualTo("cut-off/dairy/2026-11-27");
    }

    @Test
    void callsNobodyMoreThanTwoDaysAheadNorForWhatWasSent() throws Exception {
        assertThat(calls.calls(bench.clock.instant())).isEmpty();

        bench.clock.move(Duration.ofDays(1));
        assertThat(calls.calls(bench.clock.instant())).hasSize(1);
        bench.run(bench.orderVerb, folder, Map.of("--issue", "true"));
        assertThat(calls.calls(bench.clock.instant())).isEmpty();
    }

    @Test
    void callsForDraftsThatMissedTheirCutOffAndDeliveriesNobodyReceived() throws Exception {
        bench.run(bench.orderVerb, folder, Map.of());
        bench.clock.move(Duration.ofDays(3));
        assertThat(calls.calls(bench.clock.instant())).extracting(Call::id).contains("missed/2026-W48-dairy-1");

        bench.clock.move(Duration.ofDays(-3));
        bench.run(bench.orderVerb, folder, Map.of("--issue", "true"));
        bench.clock.move(Duration.ofDays(4));
        assertThat(calls.calls(bench.clock.instant())).extracting(Call::id).contains("overdue/2026-W48-dairy-1");
    }

    @Test
    void marksTheDeliveriesOfSentOrders() throws VerbException {
        bench.run(bench.orderVerb, folder, Map.of("--issue", "true"));

        List<DayMark> marks = new OrderMarks(bench.orders, bench.neighbours).marks(TUESDAY, TUESDAY.plusDays(6));

        assertThat(marks)
                .extracting(mark -> mark.day() + " " + mark.kind() + " " + mark.text())
                .containsExactly("2026-11-27 DELIVERY The dairy, 2 lines");
    }

    @Test
    void checksParsThatCannotBeCountedOrBought() {
        bench.pars.set(Bench.par("cream", "8 ea"));
        bench.pars.set(Bench.par("caviar", "1 kg"));
        bench.neighbours.items = new SetItems(
                SetKitchenware.item("cream", Unit.L),
                SetKitchenware.item("butter", Unit.KG),
                SetKitchenware.item("salt", Unit.KG));
        bench.pars.set(Bench.par("salt", "1 kg"));

        assertThat(new OrderingCheck(bench.kitchen, bench.pars, bench.orders, bench.neighbours).check())
                .extracting(problem -> problem.code() + " " + problem.where())
                .containsExactly("unknown-item pars/caviar", "missing-equivalence pars/cream", "no-offer pars/salt");
    }
}
