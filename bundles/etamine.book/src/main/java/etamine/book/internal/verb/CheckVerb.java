package etamine.book.internal.verb;

import etamine.base.Problem;
import etamine.base.Severity;
import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.check.BookCheck;
import etamine.storage.Book;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** {@code check}: the medium, then every module's own part of the book. */
@Component
public final class CheckVerb implements Verb {
    private final Book book;

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<BookCheck> checks = List.of();

    /** Checks that book. */
    @Activate
    public CheckVerb(@Reference Book book) {
        this.book = book;
    }

    CheckVerb(Book book, List<BookCheck> checks) {
        this(book);
        this.checks = List.copyOf(checks);
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("check", "Check the whole book; ends with 1 when there is something to look at");
    }

    @Override
    public Report run(VerbCall call) {
        List<Problem> problems = problems();
        boolean look = problems.stream().anyMatch(problem -> problem.severity() != Severity.NOTE);
        return new Report(
                look ? Outcome.LOOK : Outcome.DONE,
                Map.of("problems", problems.stream().map(CheckVerb::json).toList()),
                lines(problems));
    }

    private List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        book.integrity().ifPresent(damage -> problems.add(Problem.error("damaged", "book", damage)));
        book.readOnly().ifPresent(why -> problems.add(Problem.note("read-only", "book", why)));
        for (BookCheck check : checks) {
            try {
                problems.addAll(check.check());
            } catch (RuntimeException e) {
                problems.add(Problem.error(
                        "check-failed",
                        check.getClass().getName(),
                        "This check broke down (" + e + "); the others went on. Report it if it comes back."));
            }
        }
        problems.sort(Comparator.comparing(Problem::severity).reversed().thenComparing(Problem::where));
        return problems;
    }

    private static Map<String, Object> json(Problem problem) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("code", problem.code());
        json.put("severity", problem.severity().name().toLowerCase(Locale.ROOT));
        json.put("where", problem.where());
        json.put("text", problem.text());
        return json;
    }

    private static List<String> lines(List<Problem> problems) {
        if (problems.isEmpty()) {
            return List.of("The book is in order.");
        }
        return problems.stream()
                .map(problem -> problem.severity().name().toLowerCase(Locale.ROOT) + "  " + problem.where() + ": "
                        + problem.text())
                .toList();
    }
}
