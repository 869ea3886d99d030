package etamine.ordering.internal.plan;

import etamine.measures.Money;
import java.util.Optional;

/**
 * Some of an item that is there or comes together.
 *
 * @param arrives the day it comes; {@link #ON_HAND} when it is there already
 * @param grains how much
 * @param last the last day it may be used; {@link #KEEPS} when it does not matter
 * @param origin what it is, in words, such as {@code delivery of Fri 27 Nov}
 * @param value what all of it cost; empty when not known
 */
public record Batch(int arrives, long grains, int last, String origin, Optional<Money> value) {
    /** There before the first day. */
    public static final int ON_HAND = -1;

    /** Keeps longer than any plan. */
    public static final int KEEPS = Integer.MAX_VALUE;
}
