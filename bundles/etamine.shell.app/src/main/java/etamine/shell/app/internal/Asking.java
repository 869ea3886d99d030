package etamine.shell.app.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;

/**
 * Asks services of modules without trusting them: all at once, for a limited time. One that throws or does not answer is
 * reported; one that is still busy with the last question is not asked again. Not for the window's thread.
 */
final class Asking implements AutoCloseable {
    private final ExecutorService threads = Executors.newCachedThreadPool(Asking::thread);
    private final Set<Object> busy = ConcurrentHashMap.newKeySet();
    private final long limit;

    /** Gives every round of questions that many milliseconds. */
    Asking(long limit) {
        this.limit = limit;
    }

    /**
     * What came together.
     *
     * @param things the answers, in the order of the sources
     * @param failures module to sentence, for those that gave none
     */
    record Gleaned<R>(List<R> things, Map<String, String> failures) {}

    <S, R> Gleaned<R> all(List<S> sources, Function<S, List<R>> question) {
        Map<S, Future<List<R>>> asked = new LinkedHashMap<>();
        Map<String, String> failures = new LinkedHashMap<>();
        for (S source : sources) {
            if (busy.add(source)) {
                asked.put(source, threads.submit(() -> answer(source, question)));
            } else {
                failures.put(module(source), "does not answer");
            }
        }
        return new Gleaned<>(collect(asked, failures), failures);
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }

    /** The module a service belongs to, in the word of its bundle. */
    static String module(Object service) {
        String name = service.getClass().getPackageName();
        String word = name.replaceFirst("^etamine\\.", "").replaceFirst("\\.internal.*$", "");
        return word.isEmpty() ? service.getClass().getSimpleName() : word;
    }

    private <S, R> List<R> answer(S source, Function<S, List<R>> question) {
        try {
            return List.copyOf(question.apply(source));
        } finally {
            busy.remove(source);
        }
    }

    private <S, R> List<R> collect(Map<S, Future<List<R>>> asked, Map<String, String> failures) {
        List<R> things = new ArrayList<>();
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(limit);
        asked.forEach((source, future) -> {
            try {
                things.addAll(future.get(Math.max(0, end - System.nanoTime()), TimeUnit.NANOSECONDS));
            } catch (ExecutionException problem) {
                failures.put(module(source), "failed: " + Sentences.of(problem.getCause()));
            } catch (TimeoutException slow) {
                future.cancel(true);
                failures.put(module(source), "did not answer within " + limit / 1000 + " s");
            } catch (InterruptedException stop) {
                Thread.currentThread().interrupt();
            }
        });
        return things;
    }

    private static Thread thread(Runnable task) {
        Thread thread = new Thread(task, "asking");
        thread.setDaemon(true);
        return thread;
    }
}
