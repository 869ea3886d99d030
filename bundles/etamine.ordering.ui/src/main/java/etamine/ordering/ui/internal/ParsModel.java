package etamine.ordering.ui.internal;

import etamine.kitchen.item.Item;
import etamine.kitchen.par.Par;
import etamine.measures.Conversion;
import etamine.measures.Quantity;
import etamine.ordering.ParBook;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the pars table shows and does, without a widget. Writing is for another thread than the window's. */
final class ParsModel {
    private final ParBook pars;
    private final Around around;

    ParsModel(ParBook pars, Around around) {
        this.pars = pars;
        this.around = around;
    }

    Around around() {
        return around;
    }

    /** The pars by the items' names. */
    List<ParRow> rows() {
        return pars.all().values().stream()
                .map(par -> new ParRow(around.itemName(par.item()), par))
                .sorted(Comparator.comparing(ParRow::name, String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    Optional<Par> find(String item) {
        return Optional.ofNullable(pars.all().get(item));
    }

    /** Why a par cannot be saved, if it can't: a level that does not fit how the item is counted. */
    Optional<String> problem(Par par) {
        Optional<Item> item = around.items().get().flatMap(known -> known.find(par.item()));
        return item.flatMap(known -> levels(par)
                .map(level -> known.converter().convert(level, known.countIn()))
                .filter(Conversion.Missing.class::isInstance)
                .map(missing -> ((Conversion.Missing) missing).text())
                .findFirst());
    }

    private static Stream<Quantity> levels(Par par) {
        return Stream.of(
                        Stream.of(par.par()),
                        par.weekdays().values().stream(),
                        par.orderAt().stream(),
                        par.capacity().stream())
                .flatMap(levels -> levels);
    }

    void save(Par par) {
        pars.set(par);
    }

    void remove(String item) {
        pars.remove(item);
    }
}
