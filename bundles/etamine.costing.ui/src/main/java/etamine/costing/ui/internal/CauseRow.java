package etamine.costing.ui.internal;

import etamine.measures.Money;
import java.util.Optional;

/**
 * Something that moved a plate.
 *
 * @param key which of all causes
 * @param subject the item or recipe
 * @param name its name
 * @param kind what kind of change, in a word
 * @param amount how much of the change comes from it; empty when it cannot be told apart
 * @param text what changed
 */
record CauseRow(String key, String subject, String name, String kind, Optional<Money> amount, String text) {

    String amountText() {
        return amount.map(Figures::change).orElse("with others");
    }
}
