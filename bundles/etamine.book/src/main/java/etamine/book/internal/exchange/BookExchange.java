package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Progress;
import etamine.kitchen.exchange.EntryJson;
import etamine.kitchen.exchange.Exchange;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.kitchen.exchange.LoadResult;
import etamine.kitchen.exchange.LoadResult.Rejected;
import etamine.storage.Book;
import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Loads and dumps through the sections of the installed modules. */
@Component(service = {Exchange.class, BookExchange.class})
public final class BookExchange implements Exchange {
    private final Book book;
    private final KeptShelf kept;

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<ExchangeSection> sections = List.of();

    /** The exchange of that book. */
    @Activate
    public BookExchange(@Reference Book book) {
        this.book = book;
        this.kept = new KeptShelf(book);
    }

    BookExchange(Book book, List<ExchangeSection> sections) {
        this(book);
        this.sections = List.copyOf(sections);
    }

    @Override
    public LoadResult load(List<Path> files, LoadTerms terms, Progress progress) {
        List<Source> sources = new ArrayList<>();
        List<Rejected> refused = new ArrayList<>();
        for (Path file : files) {
            step(progress, "Reading " + file.getFileName(), 0.3 * sources.size() / files.size());
            try {
                sources.add(SourceReader.read(file, terms.largest()));
            } catch (RefusedFile e) {
                refused.add(new Rejected(file, e.pointer(), String.valueOf(e.getMessage())));
            }
        }
        return load(sources, refused, terms.acceptGood(), progress);
    }

    @Override
    public LoadResult load(String name, String form, Progress progress) {
        return load(name, EntryJson.read(form), progress);
    }

    /** Loads what is already in memory, under the names its sources have. */
    public LoadResult load(String name, ObjectNode form, Progress progress) {
        return load(List.of(new Source(Path.of(name), form)), List.of(), false, progress);
    }

    private LoadResult load(List<Source> sources, List<Rejected> refused, boolean onlyGood, Progress progress) {
        step(progress, "Checking", 0.3);
        List<ExchangeSection> installed = List.copyOf(sections);
        Judgement judgement = Judgement.of(installed, new Manuscript(sources), onlyGood);
        List<Fault> faults = judgement.faults();
        List<Rejected> rejected = new ArrayList<>(refused);
        faults.forEach(fault -> rejected.add(fault.rejected()));
        Map<String, Integer> keeping = new LinkedHashMap<>();
        judgement.ownerless().forEach(part -> keeping.put(part.name(), part.total()));
        boolean writable = refused.isEmpty() && (faults.isEmpty() || onlyGood && some(judgement, keeping));
        List<Path> filed = List.of();
        if (writable) {
            step(progress, "Writing", 0.7);
            filed = RejectedFiles.write(faults);
            write(judgement, sources);
        }
        progress.at(writable ? "Loaded" : "Rejected", 1);
        return new LoadResult(
                writable, judgement.good(), keeping, rejected, writable ? judgement.doubts() : List.of(), filed);
    }

    private static boolean some(Judgement judgement, Map<String, Integer> keeping) {
        return !keeping.isEmpty() || judgement.good().values().stream().anyMatch(count -> count > 0);
    }

    private void write(Judgement judgement, List<Source> sources) {
        String names = sources.stream()
                .map(source -> String.valueOf(source.file().getFileName()))
                .collect(Collectors.joining(", "));
        book.write("Load " + names, transaction -> {
            judgement.entries().values().forEach(entries -> entries.forEach(entry -> entry.write(transaction)));
            judgement.ownerless().forEach(part -> kept.keep(transaction, part.name(), part.working()));
            return judgement.entries().size();
        });
    }

    @Override
    public Map<String, Integer> dump(Path file, Progress progress) {
        if (isTheBook(file)) {
            throw new BookException(Reason.EXISTS, file + " is the book itself; name another file.");
        }
        step(progress, "Writing " + file.getFileName(), 0.3);
        DumpedSections dumped = new DumpedSections(List.copyOf(sections), kept.all());
        WholeFile.write(file, dumped::write);
        progress.at("Dumped", 1);
        return dumped.counts();
    }

    /** The whole book as the exchange form. */
    public ObjectNode dump() {
        return new DumpedSections(List.copyOf(sections), kept.all()).whole();
    }

    /** Whether it works on that book. */
    boolean serves(Book other) {
        return book == other || book.location().equals(other.location());
    }

    /** Whether the book has nothing but, perhaps, settings. */
    boolean empty() {
        ObjectNode form = dump();
        form.remove(List.of("etamine", "kitchen"));
        return form.isEmpty();
    }

    private boolean isTheBook(Path file) {
        try {
            return Files.exists(file) && Files.isSameFile(file, Path.of(book.location()));
        } catch (IOException | InvalidPathException e) {
            return false; // the book is no file here
        }
    }

    private static void step(Progress progress, String what, double share) {
        if (progress.cancelled()) {
            throw new BookException(Reason.OTHER, "Stopped; the book is as it was.");
        }
        progress.at(what, share);
    }
}
