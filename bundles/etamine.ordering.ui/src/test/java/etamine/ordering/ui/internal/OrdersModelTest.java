package etamine.ordering.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Explanation;
import etamine.base.Progress;
import etamine.kitchen.order.OrderState;
import etamine.testing.SetKitchen;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OrdersModelTest {
    private final SetDesk desk = new SetDesk();
    private final OrdersModel model = new OrdersModel(
            desk, desk, new Around(SetKitchen.at("2026-11-26T19:50:00Z"), Optional::empty, Optional::empty));

    @Test
    void listsDraftsFirstWithTheTimeLeft() {
        desk.order("old", "2026-11-24", "2026-11-23T22:00:00Z", OrderState.RECEIVED);
        desk.order("sent", "2026-11-25", "2026-11-24T22:00:00Z", OrderState.SENT);
        desk.order("soon", "2026-11-27", "2026-11-26T22:00:00Z", OrderState.DRAFT);
        desk.order("later", "2026-12-01", "2026-11-30T22:00:00Z", OrderState.DRAFT);

        List<OrderRow> rows = model.rows();

        assertThat(rows)
                .extracting(row -> row.id() + " " + row.stateText() + " " + row.closes())
                .containsExactly("soon draft 2 h 10 min", "later draft 4 d 2 h", "sent sent ", "old received ");
        assertThat(rows).extracting(OrderRow::urgent).containsExactly(true, false, false, false);
        assertThat(model.drafts()).containsExactly("soon", "later");
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            PT-1M,   closed
            PT0S,    0 h 0 min
            PT59M,   0 h 59 min
            PT23H59M, 23 h 59 min
            PT24H,   1 d 0 h
            PT50H,   2 d 2 h
            """)
    void saysHowLongIsLeft(String left, String words) {
        assertThat(OrdersModel.words(Duration.parse(left))).isEqualTo(words);
    }

    @Test
    void explainsALineByItsReasonsAndAnOrderByItsSums() {
        desk.order("soon", "2026-11-27", "2026-11-26T22:00:00Z", OrderState.DRAFT);
        LineRow line = model.lines("soon").get(0);

        Explanation why = model.explain(line);
        assertThat(why.value()).isEqualTo("2 packs of 6 x 1 l, 49.20");
        assertThat(why.parts()).extracting(Explanation::title).containsExactly("It is needed.", "It is rounded up.");
        // 49.20 of goods and 6.00 for the delivery
        assertThat(model.explain("soon").orElseThrow().value()).isEqualTo("55.20");
        assertThat(model.lines("none")).isEmpty();
    }

    @Test
    void plansTheComingWeekAndTellsWhatIsLeftShort() {
        assertThat(model.leftShort()).isEmpty();
        model.planAndDraft(Progress.unseen());

        assertThat(desk.done).containsExactly("draft from 2026-11-26");
        assertThat(model.leftShort())
                .extracting(row -> row.kind() + "|" + row.quantity() + "|" + row.why())
                .containsExactly("short|1.5 l|Nobody comes. Sorry.", "waste|40 g|It is left.", "note||A note.");
    }

    @Test
    void neverSetsLessThanNoPacks() {
        desk.order("soon", "2026-11-27", "2026-11-26T22:00:00Z", OrderState.DRAFT);
        model.setPacks(model.lines("soon").get(0), -1);

        assertThat(desk.done).containsExactly("set soon D-104 0");
    }

    @Test
    void saysWhatBecameOfAnIssue() throws IOException {
        desk.order("soon", "2026-11-27", "2026-11-26T22:00:00Z", OrderState.DRAFT);
        desk.order("late", "2026-11-26", "2026-11-25T22:00:00Z", OrderState.DRAFT);
        Path folder = Path.of("out");

        OrdersModel.Issue both = model.issue(List.of("soon", "late"), folder);
        assertThat(both.said()).isEqualTo("1 order is marked sent; 2 files are in out.");
        assertThat(both.problems()).containsExactly("The cut-off of late has passed.");
        assertThat(model.issue(List.of("late"), folder).said()).isEqualTo("No order was issued.");
    }

    @Test
    void findsTheDraftOfADelivery() {
        desk.order("soon", "2026-11-27", "2026-11-26T22:00:00Z", OrderState.DRAFT);
        desk.order("sent", "2026-12-01", "2026-11-30T22:00:00Z", OrderState.SENT);

        assertThat(model.draftFor("dairy/2026-11-27")).contains("soon");
        assertThat(model.draftFor("dairy/2026-12-01")).isEmpty();
        assertThat(model.isDraft("soon")).isTrue();
        assertThat(model.isSent("sent")).isTrue();
    }
}
