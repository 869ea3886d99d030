package etamine.book.internal.verb;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbUsage;
import etamine.storage.Book;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code backup}: a verified copy of the book. */
@Component
public final class BackupVerb implements Verb {
    private final Book book;

    /** Copies that book. */
    @Activate
    public BackupVerb(@Reference Book book) {
        this.book = book;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("backup", "Copy the book to a new file and verify the copy", "FILE");
    }

    @Override
    public Report run(VerbCall call) {
        Path file = call.file(call.arguments().get(0));
        book.backup(file, call.progress());
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("book", book.location());
        json.put("file", file.toString());
        return Report.done(json, List.of("Copied the book to " + file + " and verified the copy."));
    }
}
