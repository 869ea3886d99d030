package etamine.kitchen.exchange;

import etamine.storage.Transaction;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * An {@link ExchangeEntry} put together from its parts, for sections that need no class of their own.
 *
 * @param pointer its place within the section, such as {@code /3}; empty for the whole section
 * @param id its identifier; empty when it has none
 * @param troubles what is wrong with it alone
 * @param checking what is wrong with it beside the others
 * @param doubting what may not be meant about it beside the others
 * @param writing what writes it
 */
public record ReadEntry(
        String pointer,
        String id,
        List<ExchangeEntry.Trouble> troubles,
        Function<Facts, List<ExchangeEntry.Trouble>> checking,
        Function<Facts, List<ExchangeEntry.Trouble>> doubting,
        Consumer<Transaction> writing)
        implements ExchangeEntry {

    /** Copies the list. */
    public ReadEntry {
        troubles = List.copyOf(troubles);
    }

    /** An entry about which nothing is doubted. */
    public ReadEntry(
            String pointer,
            String id,
            List<ExchangeEntry.Trouble> troubles,
            Function<Facts, List<ExchangeEntry.Trouble>> checking,
            Consumer<Transaction> writing) {
        this(pointer, id, troubles, checking, facts -> List.of(), writing);
    }

    /** An entry that cannot be understood: it only says what is wrong. */
    public static ReadEntry refused(String pointer, String id, List<ExchangeEntry.Trouble> troubles) {
        return new ReadEntry(pointer, id, troubles, facts -> List.of(), transaction -> {});
    }

    @Override
    public List<ExchangeEntry.Trouble> check(Facts facts) {
        return checking.apply(facts);
    }

    @Override
    public List<ExchangeEntry.Trouble> doubts(Facts facts) {
        return doubting.apply(facts);
    }

    @Override
    public void write(Transaction transaction) {
        writing.accept(transaction);
    }
}
