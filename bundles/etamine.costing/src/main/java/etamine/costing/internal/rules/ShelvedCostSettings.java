package etamine.costing.internal.rules;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.costing.CostRules;
import etamine.costing.CostSettings;
import etamine.costing.internal.state.PriceBoard;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.EntryMerge;
import etamine.kitchen.exchange.Kept;
import etamine.kitchen.price.PriceSource;
import etamine.storage.Book;
import etamine.storage.LiveShelf;
import etamine.storage.ModuleFormat;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.FieldOption;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicy;

/** The rules as the one document on a shelf of the book. */
@Component(service = {CostSettings.class, ShelvedCostSettings.class})
public final class ShelvedCostSettings implements CostSettings {
    /** The section, the shelf and the only document on it. */
    static final String NAME = "costing";

    static final String MODULE = "etamine.costing";

    private final Book book;
    private final LiveShelf<Kept<CostRules>> shelf;

    @Reference(policy = ReferencePolicy.DYNAMIC, fieldOption = FieldOption.REPLACE)
    private volatile List<PriceSource> sources = List.of();

    /** The rules of that book. */
    @Activate
    public ShelvedCostSettings(@Reference Book book) {
        this.book = book;
        book.prepare(new ModuleFormat(MODULE, 1, List.of(), List.of()));
        shelf = new LiveShelf<>(book, NAME, Kept.codec(RulesForm::read));
    }

    /** Stops following the book. */
    @Deactivate
    public void close() {
        shelf.close();
    }

    /** Ranks these price sources, as the registry would hand them over. */
    ShelvedCostSettings with(List<PriceSource> someSources) {
        sources = List.copyOf(someSources);
        return this;
    }

    Book book() {
        return book;
    }

    @Override
    public CostRules rules() {
        return shelf.get(NAME).map(Kept::value).orElseGet(CostRules::unset);
    }

    @Override
    public void change(CostRules rules) {
        List<String> problems = RulesForm.problems(rules);
        if (!problems.isEmpty()) {
            throw new IllegalArgumentException(String.join(" ", problems));
        }
        ObjectNode stored = shelf.get(NAME).map(Kept::json).orElseGet(EntryJson::empty);
        ObjectNode changed = EntryMerge.apply(stored, RulesForm.write(rules()), RulesForm.write(rules));
        book.write(
                "Change how costs are reckoned",
                transaction -> transaction.save(NAME, NAME, shelf.revision(NAME), changed.toString()));
    }

    @Override
    public List<Source> sources() {
        return ranked(sources).stream()
                .map(source -> new Source(source.id(), source.label()))
                .toList();
    }

    /** Sources in the order the rules ask them. */
    public List<PriceSource> ranked(List<PriceSource> some) {
        return PriceBoard.ranked(some, rules().prices());
    }

    /** The rules that could not be read, with the reason. */
    Map<String, String> unreadable() {
        return shelf.unreadable();
    }
}
