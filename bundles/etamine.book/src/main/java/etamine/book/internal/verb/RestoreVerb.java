package etamine.book.internal.verb;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.storage.Books;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** {@code restore}: a backup back to where no book is. */
@Component
public final class RestoreVerb implements Verb {
    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<Books> shops = List.of();

    /** Restores through the installed kinds of books. */
    @Activate
    public RestoreVerb() {}

    RestoreVerb(Books shop) {
        this.shops = List.of(shop);
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("restore", "Put a backup where the book is to be; never over another book", "FILE")
                .withoutBook();
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        Path file = call.file(call.arguments().get(0));
        Books shop = shops.stream()
                .filter(each -> each.accepts(call.location()))
                .findFirst()
                .orElseThrow(() -> VerbException.wrongCall(
                        "No installed part of the program can keep a book at " + call.location() + "."));
        shop.restore(file, call.location(), call.progress());
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("book", call.location());
        json.put("from", file.toString());
        return Report.done(json, List.of("Restored " + file + " to " + call.location() + "."));
    }
}
