package etamine.book.internal.verb;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbUsage;
import etamine.book.internal.exchange.PublishedSchema;
import etamine.book.internal.exchange.WholeFile;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.storage.Book;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** {@code schema}: the JSON Schema of the exchange form with the installed modules' sections. */
@Component
public final class SchemaVerb implements Verb {
    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<ExchangeSection> sections = List.of();

    /** The schema; sections are there while a book is open. */
    @Activate
    public SchemaVerb(@Reference Book book) {
        // sections come with the book
    }

    SchemaVerb(List<ExchangeSection> sections) {
        this.sections = List.copyOf(sections);
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("schema", "Write the JSON Schema of the exchange form as it is here", "FILE");
    }

    @Override
    public Report run(VerbCall call) {
        Path file = call.file(call.arguments().get(0));
        ObjectNode schema = PublishedSchema.of(sections);
        WholeFile.write(file, schema);
        int count = schema.path("properties").size() - 1;
        return Report.done(
                Map.of("file", file.toString(), "sections", count),
                List.of("Wrote the schema of " + count + " sections to " + file + "."));
    }
}
