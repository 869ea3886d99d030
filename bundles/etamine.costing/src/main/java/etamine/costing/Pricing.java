package etamine.costing;

import org.osgi.annotation.versioning.ProviderType;

/** Works out what to charge. Thread-safe, reads only. */
@ProviderType
public interface Pricing {

    /**
     * The question for a recipe as the book has it: its cost, its hands-on work when the house costs it, its tax, and the
     * house's rounding.
     *
     * @throws IllegalArgumentException if there is no such recipe or it has no portion to price; the message says what
     *     to do
     */
    PriceQuestion about(String recipe, PriceTarget target);

    /**
     * The price that answers the question.
     *
     * @throws IllegalArgumentException if the price would be below zero, or prime cost is asked for and nobody knows the
     *     labour
     */
    PriceAdvice advise(PriceQuestion question);
}
