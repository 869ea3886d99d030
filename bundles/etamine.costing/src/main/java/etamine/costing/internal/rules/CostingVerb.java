package etamine.costing.internal.rules;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.costing.CostRules;
import etamine.costing.CostSettings;
import etamine.costing.internal.words.CostJson;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code costing}: shows the rules costs are reckoned by, and changes those that are named. */
@Component
public final class CostingVerb implements Verb {
    private final CostSettings settings;

    /** The verb on the open book. */
    @Activate
    public CostingVerb(@Reference CostSettings settings) {
        this.settings = settings;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("costing", "The rules costs and menu prices are reckoned by; options change them")
                .with("--prices", "SOURCES", "price sources in the order they are asked, with commas between")
                .with("--target", "PERCENT", "the food cost a plate should not exceed; none takes it away")
                .with("--endings", "LIST", "what menu prices may end in, such as .50,.95; none takes them away")
                .with("--labour", "on|off", "whether hands-on time is costed")
                .with("--per-hour", "AMOUNT", "what an hour costs where its station has no rate; none takes it away")
                .with(
                        "--station",
                        "NAME=AMOUNT",
                        "what an hour costs at a station, several with commas between;" + " NAME=none takes one away");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        try {
            CostRules rules = changed(call);
            if (!rules.equals(settings.rules())) {
                settings.change(rules);
            }
            return new Report(Outcome.DONE, json(), lines());
        } catch (IllegalArgumentException wrong) {
            throw VerbException.wrongCall(String.valueOf(wrong.getMessage()));
        }
    }

    private CostRules changed(VerbCall call) {
        CostRules rules = settings.rules();
        if (call.option("--prices").isPresent()) {
            rules = rules.withPrices(known(list(call.option("--prices").get())));
        }
        if (call.option("--target").isPresent()) {
            rules = rules.withTarget(amount(call.option("--target").get()));
        }
        if (call.option("--endings").isPresent()) {
            rules = rules.withEndings(list(call.option("--endings").get()).stream()
                    .map(text -> amount(text).orElseThrow())
                    .toList());
        }
        return rules.withLabour(labour(rules.labour(), call));
    }

    private static CostRules.Labour labour(CostRules.Labour labour, VerbCall call) {
        boolean on = call.option("--labour").map(CostingVerb::onOff).orElse(labour.on());
        Optional<BigDecimal> perHour =
                call.option("--per-hour").map(CostingVerb::amount).orElse(labour.perHour());
        Map<String, BigDecimal> stations = new TreeMap<>(labour.stations());
        for (String station : list(call.option("--station").orElse("none"))) {
            int equals = station.lastIndexOf('=');
            if (equals < 1) {
                throw new IllegalArgumentException("“" + station + "” is not a rate; write one such as sauce=16.50.");
            }
            String name = station.substring(0, equals).strip();
            amount(station.substring(equals + 1))
                    .ifPresentOrElse(rate -> stations.put(name, rate), () -> stations.remove(name));
        }
        return new CostRules.Labour(on, perHour, stations);
    }

    private static boolean onOff(String text) {
        if (!text.equals("on") && !text.equals("off")) {
            throw new IllegalArgumentException("Labour is on or off, not “" + text + "”.");
        }
        return text.equals("on");
    }

    private List<String> known(List<String> ids) {
        List<String> there =
                settings.sources().stream().map(CostSettings.Source::id).toList();
        ids.stream().filter(id -> !there.contains(id)).findFirst().ifPresent(unknown -> {
            throw new IllegalArgumentException(
                    "There is no price source “" + unknown + "”; there are " + String.join(", ", there) + ".");
        });
        return ids;
    }

    private static List<String> list(String text) {
        return text.equals("none")
                ? List.of()
                : Arrays.stream(text.split(","))
                        .map(String::strip)
                        .filter(part -> !part.isEmpty())
                        .toList();
    }

    private static Optional<BigDecimal> amount(String text) {
        if (text.strip().equals("none")) {
            return Optional.empty();
        }
        if (!text.strip().matches("[0-9]{0,12}(\\.[0-9]{1,6})?") || text.isBlank()) {
            throw new IllegalArgumentException("“" + text + "” is not a number; write one such as 28 or .95.");
        }
        return Optional.of(new BigDecimal(text.strip()));
    }

    private Map<String, Object> json() {
        CostRules rules = settings.rules();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put(
                "prices",
                settings.sources().stream().map(CostSettings.Source::id).toList());
        Map<String, Object> labour = new LinkedHashMap<>();
        labour.put("on", rules.labour().on());
        CostJson.put(labour, "perHour", rules.labour().perHour().map(BigDecimal::toPlainString));
        Map<String, Object> stations = new LinkedHashMap<>();
        rules.labour().stations().forEach((name, rate) -> stations.put(name, rate.toPlainString()));
        labour.put("stations", stations);
        json.put("labour", labour);
        CostJson.put(
                json, "targetFoodCostPercent", rules.targetFoodCostPercent().map(BigDecimal::toPlainString));
        json.put(
                "endings",
                rules.endings().stream().map(BigDecimal::toPlainString).toList());
        return json;
    }

    private List<String> lines() {
        CostRules rules = settings.rules();
        List<String> lines = new ArrayList<>();
        lines.add("prices are asked from: "
                + settings.sources().stream()
                        .map(source -> source.label() + " (" + source.id() + ")")
                        .collect(Collectors.joining(", ")));
        lines.add("target food cost: "
                + rules.targetFoodCostPercent()
                        .map(percent -> percent.toPlainString() + " %")
                        .orElse("none"));
        lines.add("menu prices end in: "
                + (rules.endings().isEmpty()
                        ? "anything"
                        : rules.endings().stream()
                                .map(BigDecimal::toPlainString)
                                .collect(Collectors.joining(", "))));
        lines.add("hands-on time is " + (rules.labour().on() ? "" : "not ") + "costed"
                + rules.labour()
                        .perHour()
                        .map(rate -> ", an hour at " + rate.toPlainString())
                        .orElse(""));
        rules.labour()
                .stations()
                .forEach((name, rate) -> lines.add("  an hour at " + name + ": " + rate.toPlainString()));
        return lines;
    }
}
