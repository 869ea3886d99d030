package etamine.recipes;

import etamine.measures.Quantity;
import etamine.measures.Ratio;
import java.util.List;
import java.util.Optional;

/**
 * Weight in against weight out of one batch. All sums are exact, in grams, and of what can be weighed; what cannot is
 * named in {@link #unweighed}, and then the losses are not known.
 *
 * @param inputs each line used
 * @param bought weight of all lines as purchased
 * @param trim what trimming takes away; what a preparation takes up counts to {@code added}
 * @param added water taken up: stated for the recipe or by preparations of more than their purchased weight
 * @param out weight of everything made
 * @param outputs each thing made
 * @param unweighed sentences that name what cannot be weighed and which measure is missing
 */
public record MassBalance(
        List<Input> inputs,
        Quantity bought,
        Quantity trim,
        Quantity added,
        Quantity out,
        List<Output> outputs,
        List<String> unweighed) {

    /** Copies the lists. */
    public MassBalance {
        inputs = List.copyOf(inputs);
        outputs = List.copyOf(outputs);
        unweighed = List.copyOf(unweighed);
    }

    /** What goes into the pot: as purchased, without trim, with the water taken up. */
    public Quantity in() {
        return bought.minus(trim).plus(added);
    }

    /** Whether everything can be weighed. */
    public boolean complete() {
        return unweighed.isEmpty();
    }

    /**
     * What is lost in the making, such as water cooked off or scraps left in the pan; below zero when more comes out
     * than goes in. Empty when not everything can be weighed.
     */
    public Optional<Quantity> lost() {
        return complete() ? Optional.of(in().minus(out)) : Optional.empty();
    }

    /** What is lost, over what goes in; empty when it is not known or nothing goes in. */
    public Optional<Ratio> lostShare() {
        return in().isZero() ? Optional.empty() : lost().map(lost -> lost.dividedBy(in()));
    }

    /**
     * One line used.
     *
     * @param item the item
     * @param name its name
     * @param bought its weight as purchased, in grams; empty when it cannot be weighed
     * @param used its weight after trimming, in grams; empty when it cannot be weighed
     */
    public record Input(String item, String name, Optional<Quantity> bought, Optional<Quantity> used) {}

    /**
     * One thing made.
     *
     * @param item the item
     * @param name its name
     * @param weight its weight in grams; empty when it cannot be weighed
     */
    public record Output(String item, String name, Optional<Quantity> weight) {}
}
