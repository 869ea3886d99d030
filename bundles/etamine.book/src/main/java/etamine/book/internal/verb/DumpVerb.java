package etamine.book.internal.verb;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.exchange.Exchange;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code dump}: the whole book as one exchange file. */
@Component
public final class DumpVerb implements Verb {
    private final Exchange exchange;

    /** Dumps through that exchange. */
    @Activate
    public DumpVerb(@Reference Exchange exchange) {
        this.exchange = exchange;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("dump", "Write the whole book to an exchange file", "FILE");
    }

    @Override
    public Report run(VerbCall call) {
        Path file = call.file(call.arguments().get(0));
        Map<String, Integer> sections = exchange.dump(file, call.progress());
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", file.toString());
        json.put("sections", sections);
        return Report.done(json, List.of("Wrote " + sections.size() + " sections to " + file + "."));
    }
}
