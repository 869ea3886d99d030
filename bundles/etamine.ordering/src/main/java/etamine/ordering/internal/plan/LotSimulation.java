package etamine.ordering.internal.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;

/**
 * Follows an item's batches through the days. In the morning the deliveries come; service uses what expires first; in
 * the evening what has had its last day is thrown away. What is missing stays missing: it is not made up for on
 * another day.
 */
public final class LotSimulation {
    private static final Comparator<Held> FIRST_EXPIRED_FIRST =
            Comparator.comparingInt((Held held) -> held.batch.last()).thenComparingInt(held -> held.batch.arrives());

    private final long[] use;
    private final List<Batch> coming;
    private final List<Held> shelf = new ArrayList<>();
    private final List<Course.Waste> waste = new ArrayList<>();

    private LotSimulation(long[] use, List<Batch> coming) {
        this.use = use;
        this.coming = coming;
    }

    private static final class Held {
        final Batch batch;
        long left;

        Held(Batch batch) {
            this.batch = batch;
            this.left = batch.grains();
        }
    }

    /** What becomes of an item with what it has, what is on its way and what is planned. */
    public static Course run(ItemModel item, List<Batch> planned) {
        List<Batch> all = new ArrayList<>(item.batches());
        all.addAll(planned);
        return new LotSimulation(item.wanted().use(), all).run();
    }

    private Course run() {
        long[] opening = new long[use.length];
        long[] closing = new long[use.length];
        long[] unmet = new long[use.length];
        for (int day = 0; day < use.length; day++) {
            receive(day);
            discard(day, day - 1);
            opening[day] = onShelf();
            unmet[day] = use[day] - take(use[day]);
            discard(day, day);
            closing[day] = onShelf();
        }
        return new Course(opening, closing, unmet, waste);
    }

    private void receive(int day) {
        for (Batch batch : coming) {
            if (Math.max(0, batch.arrives()) == day && batch.grains() > 0) {
                shelf.add(new Held(batch));
            }
        }
        shelf.sort(FIRST_EXPIRED_FIRST);
    }

    private long take(long wanted) {
        long taken = 0;
        for (Held held : shelf) {
            long part = Math.min(held.left, wanted - taken);
            held.left -= part;
            taken += part;
        }
        shelf.removeIf(held -> held.left == 0);
        return taken;
    }

    private void discard(int day, int lastDay) {
        for (Iterator<Held> each = shelf.iterator(); each.hasNext(); ) {
            Held held = each.next();
            if (held.batch.last() <= lastDay) {
                waste.add(new Course.Waste(held.batch, day, held.left));
                each.remove();
            }
        }
    }

    private long onShelf() {
        long sum = 0;
        for (Held held : shelf) {
            sum = Math.addExact(sum, held.left);
        }
        return sum;
    }
}
