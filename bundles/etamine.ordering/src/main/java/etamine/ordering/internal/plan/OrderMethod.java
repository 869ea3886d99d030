package etamine.ordering.internal.plan;

import etamine.base.Progress;

/** Decides what to buy. What it decides is judged by the same simulation whatever the method. */
public interface OrderMethod {

    /**
     * Decides; the same model always gives the same purchases.
     *
     * @throws java.util.concurrent.CancellationException when {@code progress} says so
     */
    Purchases plan(PlanModel model, Progress progress);
}
