package etamine.book.internal.verb;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.book.internal.FreshBook;
import etamine.kitchen.exchange.Exchange;
import etamine.kitchen.exchange.Exchange.LoadTerms;
import etamine.kitchen.exchange.LoadResult;
import etamine.storage.BookSession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** {@code load}: exchange files into the book, which is made when it is not there. */
@Component
public final class LoadVerb implements Verb {
    private static final int LARGEST_ALLOWED = 1024;

    private final BookSession session;

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<Exchange> exchanges = List.of();

    /** Loads into the book of that session. */
    @Activate
    public LoadVerb(@Reference BookSession session) {
        this.session = session;
    }

    LoadVerb(BookSession session, Exchange exchange) {
        this(session);
        this.exchanges = List.of(exchange);
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("load", "Load exchange files, all or nothing; makes the book if it is not there", "FILE...")
                .withoutBook()
                .with("--accept-good", "", "write the good entries and file the rejected ones beside the input")
                .with("--largest", "MB", "read files up to this size (64)");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        List<Path> files = files(call);
        LoadTerms terms = new LoadTerms(call.has("--accept-good"), largest(call.option("--largest")));
        FreshBook fresh = FreshBook.openOrMake(session, call.location());
        LoadResult result;
        try {
            result = exchanges.get(0).load(files, terms, call.progress());
        } catch (RuntimeException e) {
            fresh.withdraw();
            throw e;
        }
        String location = fresh.book().location();
        if (!result.written()) {
            fresh.withdraw();
        }
        LoadReport report = new LoadReport(location, fresh.made() && result.written(), result);
        return new Report(outcome(result), report.json(), report.lines());
    }

    private static Outcome outcome(LoadResult result) {
        if (!result.written()) {
            return Outcome.REJECTED;
        }
        return result.rejected().isEmpty() ? Outcome.DONE : Outcome.LOOK;
    }

    private static List<Path> files(VerbCall call) throws VerbException {
        List<Path> files = new ArrayList<>();
        for (String name : call.arguments()) {
            Path file = call.file(name);
            if (!Files.exists(file)) {
                throw VerbException.wrongCall("There is no file " + name + "; check its name and folder.");
            }
            files.add(file);
        }
        return files;
    }

    private static long largest(Optional<String> megabytes) throws VerbException {
        if (megabytes.isEmpty()) {
            return LoadTerms.USUAL_LARGEST;
        }
        String text = megabytes.get();
        if (!text.matches("[1-9][0-9]{0,3}") || Integer.parseInt(text) > LARGEST_ALLOWED) {
            throw VerbException.wrongCall(
                    "--largest is a whole number of megabytes from 1 to " + LARGEST_ALLOWED + ", not " + text + ".");
        }
        return Long.parseLong(text) << 20;
    }
}
