package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import etamine.base.Problem;
import etamine.kitchen.check.BookCheck;
import etamine.kitchen.exchange.ExchangeEntry.Trouble;
import etamine.kitchen.exchange.ExchangeSection;
import etamine.storage.Book;
import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Compares what stands in the book with the schemas of its sections, so that no document is silently passed over. */
@Component
public final class FormCheck implements BookCheck {
    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<ExchangeSection> sections = List.of();

    /** The check of that book. */
    @Activate
    public FormCheck(@Reference Book book) {
        // needs the book to be open; the sections read it
    }

    FormCheck(List<ExchangeSection> sections) {
        this.sections = List.copyOf(sections);
    }

    @Override
    public List<Problem> check() {
        List<Problem> problems = new ArrayList<>();
        for (ExchangeSection section : sections) {
            if (section.large()) {
                section.dumpEach(entry -> problems.addAll(
                        problems(section, JsonNodeFactory.instance.arrayNode().add(entry))));
            } else {
                problems.addAll(problems(section, section.dump()));
            }
        }
        return problems;
    }

    private static List<Problem> problems(ExchangeSection section, JsonNode value) {
        return value.isMissingNode()
                ? List.of()
                : SectionSchema.of(section.schema()).troubles(value).stream()
                        .map(trouble -> problem(section.name(), value, trouble))
                        .toList();
    }

    private static Problem problem(String section, JsonNode value, Trouble trouble) {
        int index = Pointers.index(trouble.pointer());
        if (!value.isArray() || index < 0) {
            return Problem.error("unfit-document", section, where(trouble.pointer()) + trouble.problem());
        }
        String id = value.path(index).path("id").asText(String.valueOf(index));
        String within = Pointers.withinElement(trouble.pointer());
        return Problem.error("unfit-document", section + '/' + id, where(within) + trouble.problem());
    }

    private static String where(String pointer) {
        return pointer.isEmpty() ? "" : "At " + pointer + ": ";
    }
}
