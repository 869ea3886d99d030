package etamine.ordering.internal.plan;

import etamine.measures.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Why a line is what it is, found by simulating the item again with one pack less, and without the line. */
final class LineReasons {
    private final PlanModel model;
    private final PlanWords words;
    private final Purchase line;
    private final ItemModel item;
    private final Course with;
    private final Course less;
    private final Course without;
    private final long level;
    private final int next;

    LineReasons(PlanModel model, PlanWords words, Purchase line, List<Purchase> all) {
        this.model = model;
        this.words = words;
        this.line = line;
        this.item = line.item();
        this.next = supplier().next(line.slot().day());
        this.level = item.wanted().level(line.slot().day(), next);
        this.with = course(all, line.packs());
        this.less = course(all, line.packs() - 1);
        this.without = course(all, 0);
    }

    /** The reasons, a sentence each. */
    List<String> sentences() {
        List<String> why = new ArrayList<>();
        why.add(need());
        why.add(thisDay());
        if (line.packs() > 1) {
            why.add(onePackLess());
        }
        rounding().ifPresent(why::add);
        room().ifPresent(why::add);
        tier().ifPresent(why::add);
        minimum().ifPresent(why::add);
        binned().ifPresent(why::add);
        elsewhere().ifPresent(why::add);
        return why;
    }

    private Course course(List<Purchase> all, long packs) {
        List<Batch> batches = new ArrayList<>();
        for (Purchase purchase : all) {
            Purchase counted = purchase == line ? purchase.withPacks(packs, 0) : purchase;
            batches.add(counted.batch(model.start()));
        }
        return LotSimulation.run(item, batches);
    }

    private String need() {
        String until = words.day(next);
        String what = item.wanted().hasPar()
                ? "its par until " + until
                : "the use expected before " + until + " and a tenth more for safety";
        return words.day(line.slot().day()) + " would open with "
                + amount(without.opening()[line.slot().day()]) + "; wanted are " + amount(level) + ", " + what + ".";
    }

    private String thisDay() {
        int short1 = firstMore(without);
        if (short1 < 0) {
            return "Without this line nothing runs short before " + words.day(without.unmet().length) + ".";
        }
        String shortage = "Without this line " + amount(without.unmet()[short1] - with.unmet()[short1])
                + " are missing on " + words.day(short1);
        boolean last = next > short1;
        return shortage
                + (last ? ", and no later delivery of " + supplier().supplier().name() + " comes in time." : ".");
    }

    private String onePackLess() {
        int short1 = firstMore(less);
        if (short1 >= 0) {
            long missing = less.unmet()[short1] - with.unmet()[short1];
            return "With one pack less " + amount(missing) + " are missing on " + words.day(short1) + ".";
        }
        long below = level - less.opening()[line.slot().day()];
        return below > 0
                ? "With one pack less " + words.day(line.slot().day()) + " opens " + amount(below) + " below that."
                : "With one pack less nothing is missing.";
    }

    private int firstMore(Course other) {
        for (int day = 0; day < other.unmet().length; day++) {
            if (other.unmet()[day] > with.unmet()[day]) {
                return day;
            }
        }
        return -1;
    }

    private long gap() {
        return level - without.opening()[line.slot().day()];
    }

    private Optional<String> rounding() {
        long rounded = (line.packs() - line.added()) * line.offer().content() - gap();
        return rounded > 0 && gap() > 0
                ? Optional.of(amount(rounded) + " of it come from rounding up to whole packs.")
                : Optional.empty();
    }

    private Optional<String> room() {
        return line.offer().packsFor(gap()) > line.packs()
                ? Optional.of("There is room for " + amount(item.wanted().capacity()) + " only.")
                : Optional.empty();
    }

    private Optional<String> tier() {
        OfferModel.Tier reached = line.offer().tier(line.packs());
        return reached.fromPacks() > 1
                ? Optional.of("From " + reached.fromPacks() + " packs on a pack costs " + reached.packPrice()
                        + " instead of " + line.offer().tier(1).packPrice() + ".")
                : Optional.empty();
    }

    private Optional<String> minimum() {
        return line.added() > 0
                ? Optional.of(
                        line.added() + " of " + PlanWords.packs(line.packs()) + " were added to reach the minimum of "
                                + supplier().supplier().minimum() + ".")
                : Optional.empty();
    }

    private Optional<String> binned() {
        Batch mine = line.batch(model.start());
        return with.waste().stream()
                .filter(waste -> waste.batch().equals(mine) && waste.day() < model.days())
                .findFirst()
                .map(waste -> amount(waste.grains()) + " of it are expected to be unused after their last day, "
                        + words.day(waste.day()) + ".");
    }

    private Optional<String> elsewhere() {
        long wanted = line.packs() * line.offer().content();
        return item.offers().stream()
                .filter(offer -> offer.holdsOn(line.slot().day())
                        && !offer.offer().supplier().equals(line.slot().supplier()))
                .min(Comparator.comparing((OfferModel offer) -> offer.amount(offer.packsFor(wanted))))
                .map(offer -> "As much from " + name(offer.offer().supplier()) + " costs "
                        + price(offer, wanted) + " (" + PlanWords.packs(offer.packsFor(wanted)) + " of "
                        + offer.offer().pack() + ").");
    }

    private static Money price(OfferModel offer, long wanted) {
        return offer.amount(offer.packsFor(wanted));
    }

    private SupplierModel supplier() {
        return model.suppliers().get(line.slot().supplier());
    }

    private String name(String supplier) {
        SupplierModel known = model.suppliers().get(supplier);
        return known == null ? supplier : known.supplier().name();
    }

    private String amount(long grains) {
        return words.amount(item, grains);
    }
}
