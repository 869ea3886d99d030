package etamine.book.internal.verb;

import etamine.base.Subject;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbUsage;
import etamine.kitchen.house.Kitchen;
import etamine.kitchen.today.Call;
import etamine.kitchen.today.CallSource;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** {@code today}: what needs somebody now. */
@Component
public final class TodayVerb implements Verb {
    private final Kitchen kitchen;

    @Reference(
            cardinality = ReferenceCardinality.MULTIPLE,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<CallSource> sources = List.of();

    /** The calls by that kitchen's clock. */
    @Activate
    public TodayVerb(@Reference Kitchen kitchen) {
        this.kitchen = kitchen;
    }

    TodayVerb(Kitchen kitchen, List<CallSource> sources) {
        this(kitchen);
        this.sources = List.copyOf(sources);
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("today", "What needs somebody now");
    }

    @Override
    public Report run(VerbCall call) {
        Clock clock = kitchen.clock();
        List<Call> calls = calls(clock.instant());
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("now", clock.instant().toString());
        json.put("today", kitchen.today().toString());
        json.put("calls", calls.stream().map(TodayVerb::json).toList());
        List<String> lines = calls.isEmpty()
                ? List.of("Nothing needs you now.")
                : calls.stream().map(TodayVerb::line).toList();
        return Report.done(json, lines);
    }

    private List<Call> calls(Instant now) {
        List<Call> calls = new ArrayList<>();
        for (CallSource source : sources) {
            try {
                calls.addAll(source.calls(now));
            } catch (RuntimeException e) {
                calls.add(broken(source, e));
            }
        }
        calls.sort(Comparator.comparing(Call::urgency)
                .thenComparing(call -> call.due().orElse(Instant.MAX))
                .thenComparing(Call::id));
        return calls;
    }

    private static Call broken(CallSource source, RuntimeException e) {
        String name = source.getClass().getName();
        return new Call(
                "broken/" + name,
                Call.Urgency.SOON,
                "A part of the program could not look for calls (" + e
                        + "); run check, and report it if it comes back.",
                Optional.empty(),
                new Subject("module", name));
    }

    private static Map<String, Object> json(Call call) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", call.id());
        json.put("urgency", call.urgency().name().toLowerCase(Locale.ROOT));
        json.put("text", call.text());
        call.due().ifPresent(due -> json.put("due", due.toString()));
        json.put("subject", call.subject().toString());
        return json;
    }

    private static String line(Call call) {
        return String.format(Locale.ROOT, "%-5s  %s", call.urgency().name().toLowerCase(Locale.ROOT), call.text());
    }
}
