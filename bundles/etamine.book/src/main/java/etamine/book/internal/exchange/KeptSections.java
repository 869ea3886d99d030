package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.base.Problem;
import etamine.kitchen.check.BookCheck;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.storage.Book;
import etamine.storage.BookException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/**
 * Gives kept sections to their modules: when a book is opened, and a moment after a module came, so that all sections
 * of that module are there. A section that does not fit stays kept, and the check of the book says why.
 */
@Component(
        service = {Adoption.class, BookCheck.class},
        immediate = true)
public final class KeptSections implements Adoption, BookCheck {
    private static final long MOMENT = 500;

    private final Book book;
    private final KeptShelf kept;
    private final List<ExchangeSection> sections = new CopyOnWriteArrayList<>();
    private final ScheduledExecutorService later = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "etamine-adoption");
        thread.setDaemon(true);
        return thread;
    });

    /** The kept sections of that book. */
    @Activate
    public KeptSections(@Reference Book book) {
        this.book = book;
        this.kept = new KeptShelf(book);
    }

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    void addSection(ExchangeSection section) {
        sections.add(section);
        if (kept.has(section.name())) {
            later.schedule(this::settleLater, MOMENT, TimeUnit.MILLISECONDS);
        }
    }

    void removeSection(ExchangeSection section) {
        sections.remove(section);
    }

    @Deactivate
    void close() {
        later.shutdownNow();
    }

    @Override
    public synchronized void settle() {
        Set<String> fitting = claimed();
        if (fitting.isEmpty() || book.readOnly().isPresent()) {
            return;
        }
        Judgement judgement = judge(fitting);
        while (!judgement.faults().isEmpty()) {
            judgement.faults().forEach(fault -> fitting.remove(fault.part().name()));
            judgement = judge(fitting);
        }
        if (!fitting.isEmpty()) {
            adopt(judgement, fitting);
        }
    }

    private void settleLater() {
        try {
            settle();
        } catch (BookException closedOrBusy) {
            // the sections stay kept, and the next opening of the book tries again
        }
    }

    private void adopt(Judgement judgement, Set<String> names) {
        book.write("Take over " + String.join(", ", names), transaction -> {
            judgement.entries().values().forEach(entries -> entries.forEach(entry -> entry.write(transaction)));
            names.forEach(name -> kept.release(transaction, name));
            return names.size();
        });
    }

    private Set<String> claimed() {
        Set<String> claimed = new LinkedHashSet<>(kept.all().keySet());
        claimed.retainAll(sections.stream().map(ExchangeSection::name).toList());
        return claimed;
    }

    private Judgement judge(Set<String> names) {
        ObjectNode form = JsonNodeFactory.instance.objectNode();
        kept.all().forEach((name, value) -> {
            if (names.contains(name)) {
                form.set(name, value);
            }
        });
        Manuscript manuscript = new Manuscript(List.of(new Source(Path.of("kept"), form)));
        return Judgement.of(List.copyOf(sections), manuscript, false);
    }

    @Override
    public synchronized List<Problem> check() {
        List<Problem> problems = new ArrayList<>();
        Set<String> claimed = claimed();
        Map<String, List<Fault>> misfits = new LinkedHashMap<>();
        judge(claimed)
                .faults()
                .forEach(fault -> misfits.computeIfAbsent(fault.part().name(), any -> new ArrayList<>())
                        .add(fault));
        kept.all().forEach((name, value) -> {
            if (!claimed.contains(name)) {
                problems.add(Problem.note(
                        "kept-section",
                        "kept/" + name,
                        "The section " + name + " (" + KeptShelf.count(value)
                                + ") is kept because no installed module owns it; install the module to use it."));
            }
        });
        misfits.forEach((name, faults) -> problems.add(misfit(name, faults)));
        return problems;
    }

    private static Problem misfit(String name, List<Fault> faults) {
        Fault first = faults.get(0);
        return Problem.warning(
                "kept-misfit",
                "kept/" + name,
                "The section " + name + " stays kept because it does not fit (" + faults.size()
                        + " problems); dump the book, mend the section and load it again. First at " + first.inFile()
                        + ": " + first.problem());
    }
}
