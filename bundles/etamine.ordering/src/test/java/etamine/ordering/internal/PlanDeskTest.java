package etamine.ordering.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import etamine.base.Progress;
import etamine.kitchen.covers.WrittenUse;
import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.OrderState;
import etamine.kitchen.order.SupplierOrder;
import etamine.kitchen.par.Par;
import etamine.kitchen.supply.Offer;
import etamine.measures.Money;
import etamine.measures.Pack;
import etamine.measures.Quantity;
import etamine.ordering.IssuedOrder;
import etamine.ordering.OrderPlan;
import etamine.ordering.PlanTerms;
import etamine.storage.BookException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanDeskTest {
    private static final LocalDate TUESDAY = LocalDate.of(2026, 11, 24);

    private final Bench bench = Bench.withDairy();

    @TempDir
    Path folder;

    @Test
    void plansForDeliveriesThatCanStillBeOrdered() {
        // It is Tuesday morning: today's delivery had its cut-off last night, so Friday's is the first.
        OrderPlan plan = plan();

        assertThat(plan.orders()).hasSize(1);
        assertThat(plan.orders().get(0).delivery().day()).isEqualTo(TUESDAY.plusDays(3));
        // cream: par 8 l, 4.5 l there: 3.5 l short, 1 pack of 6 l; butter: par 3 kg, none there: 2 packs of 2 kg.
        assertThat(plan.orders().get(0).lines())
                .extracting(line -> line.code() + " " + line.packs())
                .containsExactly("D-201 2", "D-104 1");
        assertThat(plan.orders().get(0).goods()).isEqualTo(euro("54.60"));
        assertThat(plan.total()).isEqualTo(euro("60.60"));
    }

    @Test
    void plansAPastDayAsIfItsMorningWereNow() {
        OrderPlan plan = bench.desk.plan(new PlanTerms(TUESDAY.minusDays(4), 7), Progress.unseen());

        assertThat(plan.orders().get(0).delivery().day()).isEqualTo(TUESDAY);
    }

    @Test
    void paysThePriceOfTheDayOfDelivery() {
        // Cream becomes dearer on Friday the 27th, when the first delivery comes, and again on Tuesday the 1st.
        bench.catalogue
                .offer("dairy", "cream", "D-104", "6 x 1 l", "25.00", Optional.of(TUESDAY.plusDays(3)))
                .offer("dairy", "cream", "D-104", "6 x 1 l", "26.00", Optional.of(TUESDAY.plusDays(7)));
        bench.diary.written.add(new WrittenUse(TUESDAY.plusDays(5), "cream", Quantity.parse("9 l")));

        OrderPlan plan = bench.desk.plan(new PlanTerms(TUESDAY, 8), Progress.unseen());

        assertThat(plan.orders())
                .extracting(order -> order.delivery().day() + " "
                        + order.lines().get(order.lines().size() - 1).packPrice())
                .containsExactly("2026-11-27 25.00", "2026-12-01 26.00");
        // As when packs are changed by hand.
        bench.desk.draft(plan);
        bench.desk.setPacks("2026-W48-dairy-1", line("D-104"), 3);
        assertThat(line("D-104").amount()).isEqualTo(euro("75.00"));
    }

    @Test
    void buysForNoDeliveryBeforeTheOfferHolds() {
        bench.neighbours.catalogue = new SetCatalogue()
                .supplier("dairy", "0", "0", DayOfWeek.FRIDAY, DayOfWeek.MONDAY)
                .offer("dairy", "cream", "D-104", "6 x 1 l", "24.60", Optional.of(TUESDAY.plusDays(4)));

        assertThat(plan().orders()).extracting(order -> order.delivery().day()).containsExactly(TUESDAY.plusDays(6));
    }

    @Test
    void fillsWeekdayPars() {
        bench.pars.set(new Par(
                "cream",
                Quantity.parse("8 l"),
                Map.of(DayOfWeek.FRIDAY, Quantity.parse("18 l")),
                Optional.empty(),
                Optional.empty()));

        assertThat(plan().orders().get(0).lines().get(1).packs()).isEqualTo(3);
    }

    @Test
    void leavesOutWhatIsUsedButNeitherSoldNorKept() {
        bench.diary.written.add(new WrittenUse(TUESDAY, "water", Quantity.parse("5 l")));
        OrderPlan plan = plan();
        assertThat(plan.shortfalls()).noneMatch(shortfall -> shortfall.item().equals("water"));
        assertThat(plan.notes()).anyMatch(note -> note.startsWith("water is not planned"));

        bench.stock.lot("water", "1 l", "");
        assertThat(plan().shortfalls()).anyMatch(shortfall -> shortfall.item().equals("water"));
    }

    @Test
    void countsWhatWasSentAsOnOrder() throws IOException {
        issueAll();

        assertThat(plan().orders()).isEmpty();
        assertThat(bench.orders.onOrder())
                .extracting(line -> line.item() + " " + line.quantity())
                .containsExactly("butter 4 kg", "cream 6 l");
    }

    @Test
    void takesWhatIsOnOrderToKeepAsShortAsAnyArticleOfItsSupplier() throws IOException {
        // 6 l come on Friday the 27th; among the dairy's creams one keeps for a day only, so until Saturday the 28th.
        issueAll();
        assertThat(plan().expectedWaste()).isEmpty();

        bench.catalogue.fresh("dairy", "cream", "D-109", "1 l", 1);

        assertThat(plan().expectedWaste())
                .extracting(waste -> waste.item() + " " + waste.quantity() + " " + waste.day())
                .contains("cream 6 l 2026-11-28");
    }

    @Test
    void replacesDraftsButNeverWhatWasSent() throws IOException {
        bench.desk.draft(plan());
        List<SupplierOrder> again = bench.desk.draft(plan());
        assertThat(bench.orders.all()).isEqualTo(again);
        assertThat(again).extracting(SupplierOrder::id).containsExactly("2026-W48-dairy-1");

        bench.desk.issue(List.of("2026-W48-dairy-1"), folder);
        bench.pars.set(Bench.par("cream", "20 l"));
        bench.desk.draft(plan());

        assertThat(bench.orders.all())
                .extracting(order -> order.id() + " " + order.state())
                .containsExactlyInAnyOrder("2026-W48-dairy-1 SENT", "2026-W48-dairy-2 DRAFT");
    }

    @Test
    void dropsDraftsThatAreNoLongerNeeded() {
        bench.desk.draft(plan());
        bench.pars.remove("cream");
        bench.pars.remove("butter");

        assertThat(bench.desk.draft(plan())).isEmpty();
        assertThat(bench.orders.all()).isEmpty();
    }

    @Test
    void draftsCanBeUndoneInOneStep() {
        bench.desk.draft(plan());

        assertThat(bench.book.history().undo()).contains("Draft orders");
        assertThat(bench.orders.all()).isEmpty();
    }

    @Test
    void writesFilesBeforeItMarksAnOrderSent() throws IOException {
        List<IssuedOrder> issued = issueAll();

        assertThat(issued.get(0).order().state()).isEqualTo(OrderState.SENT);
        assertThat(issued.get(0).files())
                .containsExactly(folder.resolve("2026-W48-dairy-1.csv"), folder.resolve("2026-W48-dairy-1.pdf"));
        assertThat(Files.readString(issued.get(0).files().get(0))).isEqualTo("""
                2026-W48-dairy-1,dairy,2026-11-27,D-201,butter,Butter,2,2 kg,15.00,30.00,EUR
                2026-W48-dairy-1,dairy,2026-11-27,D-104,cream,Cream,1,6 x 1 l,24.60,24.60,EUR""");
        assertThat(Files.readString(issued.get(0).files().get(1)))
                .contains("Order 2026-W48-dairy-1", "The dairy", "Friday 27 November 2026", "60.60 EUR");
    }

    @Test
    void marksNothingSentWhenAFileCannotBeWritten() {
        ((Bench.PlainDocuments) bench.neighbours.documents).failsFor = "2026-W48-dairy-1.pdf";
        bench.desk.draft(plan());

        assertThatThrownBy(() -> bench.desk.issue(List.of("2026-W48-dairy-1"), folder))
                .isInstanceOf(IOException.class);
        assertThat(bench.orders.find("2026-W48-dairy-1").orElseThrow().state()).isEqualTo(OrderState.DRAFT);
    }

    @Test
    void sendsNothingThatChangedWhileItsPapersWereWritten() throws IOException {
        bench.desk.draft(plan());
        Bench.PlainDocuments documents = (Bench.PlainDocuments) bench.neighbours.documents;
        documents.afterPdf = () -> bench.desk.setPacks("2026-W48-dairy-1", line("D-104"), 3);

        assertThatThrownBy(() -> bench.desk.issue(List.of("2026-W48-dairy-1"), folder))
                .isInstanceOfSatisfying(
                        BookException.class,
                        refused -> assertThat(refused.reason()).isEqualTo(BookException.Reason.STALE))
                .hasMessageContaining("issue again");
        assertThat(folder).isEmptyDirectory();
        assertThat(bench.orders.find("2026-W48-dairy-1").orElseThrow().state()).isEqualTo(OrderState.DRAFT);

        documents.afterPdf = () -> {};
        IssuedOrder again =
                bench.desk.issue(List.of("2026-W48-dairy-1"), folder).get(0);
        assertThat(again.order().state()).isEqualTo(OrderState.SENT);
        assertThat(Files.readString(again.files().get(0))).contains("D-104,cream,Cream,3,");
    }

    @Test
    void takesPapersAwayWhenTheDraftIsGone() {
        bench.desk.draft(plan());
        ((Bench.PlainDocuments) bench.neighbours.documents).afterPdf = () -> bench.desk.discard("2026-W48-dairy-1");

        assertThatThrownBy(() -> bench.desk.issue(List.of("2026-W48-dairy-1"), folder))
                .isInstanceOf(BookException.class);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void leavesADraftThatMissedItsCutOff() throws IOException {
        bench.desk.draft(plan());
        bench.clock.move(Duration.ofDays(3));

        List<IssuedOrder> issued = bench.desk.issue(List.of("2026-W48-dairy-1"), folder);

        assertThat(issued.get(0).problem()).contains("cut-off");
        assertThat(issued.get(0).order().state()).isEqualTo(OrderState.DRAFT);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void changesPacksAndTheGoodsValue() {
        bench.desk.draft(plan());
        bench.desk.setPacks("2026-W48-dairy-1", line("D-104"), 3);

        SupplierOrder order = bench.orders.find("2026-W48-dairy-1").orElseThrow();
        assertThat(order.goods()).isEqualTo(euro("103.80"));
        assertThat(order.lines().get(1).why()).containsExactly("Set by hand.");
    }

    @Test
    void tellsLinesWithoutAnArticleNumberApart() {
        bench.neighbours.catalogue = new SetCatalogue()
                .supplier("dairy", "0", "0", DayOfWeek.FRIDAY)
                .offer("dairy", "cream", "", "6 x 1 l", "24.60")
                .offer("dairy", "butter", "", "2 kg", "15.00");
        bench.desk.draft(plan());
        bench.desk.setPacks("2026-W48-dairy-1", line(""), 5);

        assertThat(bench.orders.find("2026-W48-dairy-1").orElseThrow().lines())
                .extracting(line -> line.item() + " " + line.packs())
                .containsExactly("butter 5", "cream 1");
    }

    @Test
    void takesLinesOffAndDropsAnOrderWithoutLines() {
        bench.desk.draft(plan());
        bench.desk.setPacks("2026-W48-dairy-1", line("D-104"), 0);
        assertThat(bench.orders.find("2026-W48-dairy-1").orElseThrow().lines()).hasSize(1);

        bench.desk.setPacks("2026-W48-dairy-1", line("D-201"), 0);
        assertThat(bench.orders.all()).isEmpty();
    }

    @Test
    void addsAnOfferToALineThatIsThereAlready() {
        bench.desk.draft(plan());
        Offer cream = bench.catalogue.offersFor("cream", TUESDAY).get(0);
        bench.desk.addLine("2026-W48-dairy-1", cream, 2);

        assertThat(bench.orders.find("2026-W48-dairy-1").orElseThrow().lines())
                .extracting(line -> line.code() + " " + line.packs())
                .containsExactly("D-201 2", "D-104 3");
    }

    @Test
    void refusesToChangeWhatWasSent() throws IOException {
        issueAll();

        assertThatThrownBy(() -> bench.desk.setPacks("2026-W48-dairy-1", line("D-104"), 3))
                .isInstanceOf(BookException.class);
        assertThatThrownBy(() -> bench.desk.discard("2026-W48-dairy-1")).isInstanceOf(BookException.class);
    }

    @Test
    void receivesAndCallsOffSentOrders() throws IOException {
        issueAll();
        bench.book.write("receive", transaction -> {
            bench.orders.received(transaction, "2026-W48-dairy-1");
            return 0;
        });
        assertThat(bench.orders.find("2026-W48-dairy-1").orElseThrow().state()).isEqualTo(OrderState.RECEIVED);
        assertThat(bench.orders.onOrder()).isEmpty();
        assertThatThrownBy(() -> bench.desk.cancel("2026-W48-dairy-1")).isInstanceOf(BookException.class);
    }

    @Test
    void planWithoutACatalogueListsWhatIsNeeded() {
        bench.neighbours.catalogue = null;

        OrderPlan plan = plan();

        assertThat(plan.orders()).isEmpty();
        assertThat(plan.shortfalls())
                .extracting(short1 -> short1.item() + " " + short1.quantity())
                .containsExactly("butter 3 kg", "cream 3.5 l");
        assertThat(plan.notes()).contains("There is no catalogue module, so nobody can be ordered from.");
    }

    @Test
    void planWithoutStockTakesNothingAsOnHandAndSaysSo() {
        bench.neighbours.stock = null;

        OrderPlan plan = plan();

        assertThat(plan.orders().get(0).lines().get(1).packs()).isEqualTo(2);
        assertThat(plan.notes()).contains("There is no stock module, so nothing counts as on hand.");
    }

    @Test
    void planWithoutAnyNeighbourStillAnswers() {
        bench.neighbours.items = null;
        bench.neighbours.stock = null;
        bench.neighbours.catalogue = null;
        bench.neighbours.diary = null;

        assertThat(plan().shortfalls()).hasSize(2);
    }

    @Test
    void orderNumbersAreFitForFileNames() {
        assertThat(OrderNumber.next("a/b c", LocalDate.of(2027, 1, 1), Set.of("2026-W53-a-b-c-1")))
                .isEqualTo("2026-W53-a-b-c-2");
    }

    private OrderLine line(String code) {
        OrderLine cream =
                new OrderLine("cream", "D-104", 1, Pack.parse("6 x 1 l"), euro("24.60"), euro("24.60"), List.of());
        return bench.orders.find("2026-W48-dairy-1").stream()
                .flatMap(order -> order.lines().stream())
                .filter(line -> line.code().equals(code))
                .findFirst()
                .orElse(cream);
    }

    private List<IssuedOrder> issueAll() throws IOException {
        return bench.desk.issue(
                bench.desk.draft(plan()).stream().map(SupplierOrder::id).toList(), folder);
    }

    private OrderPlan plan() {
        return bench.desk.plan(new PlanTerms(TUESDAY, 7), Progress.unseen());
    }

    private static Money euro(String amount) {
        return Money.of(amount, SetCatalogue.EUR);
    }
}
