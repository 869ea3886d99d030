package etamine.book.internal.verb;

import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.find.Finder;
import etamine.kitchen.find.Finder.Found;
import etamine.storage.Book;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** {@code find}: things of all modules by what somebody types. */
@Component
public final class FindVerb implements Verb {
    private static final int AT_MOST = 20;

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<Finder> finders = List.of();

    /** Finds in that book. */
    @Activate
    public FindVerb(@Reference Book book) {
        // needs the book to be open; the finders read it
    }

    FindVerb(List<Finder> finders) {
        this.finders = List.copyOf(finders);
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("find", "Find ingredients, recipes, suppliers and more by name", "TEXT...");
    }

    @Override
    public Report run(VerbCall call) {
        String text = String.join(" ", call.arguments()).strip();
        List<Found> found = finders.stream()
                .flatMap(finder -> finder.find(text, AT_MOST).stream())
                .toList();
        TextTable table = new TextTable("what", "id", "name", "");
        found.forEach(each -> table.row(each.subject().kind(), each.subject().id(), each.title(), each.hint()));
        List<String> lines = found.isEmpty() ? List.of("Nothing is called \"" + text + "\".") : table.lines();
        return Report.done(Map.of("found", found.stream().map(FindVerb::json).toList()), lines);
    }

    private static Map<String, Object> json(Found found) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("kind", found.subject().kind());
        json.put("id", found.subject().id());
        json.put("title", found.title());
        json.put("hint", found.hint());
        return json;
    }
}
