package etamine.ordering;

import etamine.base.Progress;
import etamine.kitchen.order.OrderLine;
import etamine.kitchen.order.SupplierOrder;
import etamine.kitchen.supply.Offer;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Plans orders and takes them from draft to sent. Thread-safe; each change is one undoable transaction, durable when
 * the call returns. Not to be called on the window's thread.
 */
@ProviderType
public interface OrderDesk {

    /**
     * Plans by the hand method: each item from one supplier, at each of its deliveries up to the needed level in whole
     * packs. Writes nothing.
     *
     * @throws java.util.concurrent.CancellationException when {@code progress} says so
     */
    OrderPlan plan(PlanTerms terms, Progress progress);

    /** Saves the plan's orders as drafts in place of all drafts there are; orders already sent stay as they are. */
    List<SupplierOrder> draft(OrderPlan plan);

    /**
     * Sets the packs of a draft's line; 0 takes the line off, and an order without lines is dropped. The line is known by
     * its item, article number and pack.
     *
     * @throws etamine.storage.BookException if the order is no draft any more
     */
    void setPacks(String order, OrderLine line, long packs);

    /** Adds an offer of the order's supplier to a draft, or as many packs more to a line that is already there. */
    void addLine(String order, Offer offer, long packs);

    /** Drops a draft. */
    void discard(String order);

    /** Notes that a sent order was called off, so that it is no longer on order. */
    void cancel(String order);

    /**
     * Writes a CSV and a PDF file for each of these drafts, and once all files are safely written marks all of them
     * sent in one transaction. A draft whose cut-off has passed is left a draft. If one of them is changed meanwhile, no
     * order is marked sent and the files are taken away again.
     *
     * @param orders ids of drafts
     * @param folder where the files go; made when it is not there
     * @return the orders with their files, in the order given
     * @throws IOException if a file cannot be written; then no order is marked sent
     * @throws etamine.storage.BookException if one is no draft, or was changed while it was being issued
     */
    List<IssuedOrder> issue(List<String> orders, Path folder) throws IOException;
}
