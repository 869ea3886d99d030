package etamine.shell.app.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.today.Call;
import etamine.kitchen.today.CallSource;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class AskingTest {
    private static final Instant NOW = Instant.parse("2026-11-24T10:00:00Z");
    private final Asking asking = new Asking(400);

    @AfterEach
    void stop() {
        asking.close();
    }

    @Test
    void reportsASourceThatThrowsAndKeepsTheOthers() {
        CallSource broken = now -> {
            throw new IllegalStateException("the list of lots is damaged");
        };
        Asking.Gleaned<Call> gleaned = ask(broken, Fakes::calls);
        assertThat(gleaned.things()).hasSize(4);
        assertThat(gleaned.failures()).containsValue("failed: the list of lots is damaged");
    }

    @Test
    void doesNotWaitForASourceThatHangsNorAskItAgain() {
        CountDownLatch never = new CountDownLatch(1);
        AtomicInteger asked = new AtomicInteger();
        CallSource hanging = now -> {
            asked.incrementAndGet();
            awaitDeafly(never);
            return List.of();
        };
        long start = System.nanoTime();
        Asking.Gleaned<Call> first = ask(hanging, Fakes::calls);
        Asking.Gleaned<Call> second = ask(hanging, Fakes::calls);
        long milliseconds = (System.nanoTime() - start) / 1_000_000;
        never.countDown();
        assertThat(first.things()).hasSize(4);
        assertThat(second.things()).hasSize(4);
        assertThat(asked).hasValue(1);
        assertThat(first.failures()).hasSize(1);
        assertThat(second.failures()).hasSize(1);
        assertThat(milliseconds).isLessThan(5_000);
    }

    @Test
    void makesACallOfEachFailureAndSortsByUrgencyThenTime() {
        Asking.Gleaned<Call> gleaned = new Asking.Gleaned<>(Fakes.calls(NOW), Map.of("inventory", "does not answer"));
        List<Call> calls = Today.sorted(gleaned, Map.of("ordering", "failed: no catalogue"));
        assertThat(calls)
                .extracting(Call::id)
                .containsExactly("c1", "c3", "c2", "failed/inventory", "failed/ordering", "c4");
        assertThat(calls.get(3).text())
                .isEqualTo("The module inventory does not answer. Its calls may be missing here.");
    }

    private Asking.Gleaned<Call> ask(CallSource... sources) {
        return asking.all(List.of(sources), source -> source.calls(NOW));
    }

    /** Waits as a module would that pays no attention to being interrupted. */
    private static void awaitDeafly(CountDownLatch latch) {
        while (latch.getCount() > 0) {
            try {
                latch.await();
            } catch (InterruptedException ignored) {
                Thread.onSpinWait();
            }
        }
    }
}
