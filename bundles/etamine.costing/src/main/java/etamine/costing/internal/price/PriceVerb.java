package etamine.costing.internal.price;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.costing.CostSettings;
import etamine.costing.Experiment;
import etamine.costing.Experiments;
import etamine.costing.PriceAdvice;
import etamine.costing.PriceQuestion;
import etamine.costing.PriceRounding;
import etamine.costing.PriceTarget;
import etamine.costing.Pricing;
import etamine.costing.internal.words.Amounts;
import etamine.costing.internal.words.CallWords;
import etamine.kitchen.house.Kitchen;
import etamine.measures.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code price [ID]}: what to charge for a recipe, or for a cost that is not in the book yet. */
@Component
public final class PriceVerb implements Verb {
    private static final List<String> TARGETS = List.of("--food-cost", "--contribution", "--factor", "--prime");

    private final Pricing pricing;
    private final CostSettings settings;
    private final Kitchen kitchen;
    private final Experiments experiments;

    /** The verb on the open book. */
    @Activate
    public PriceVerb(
            @Reference Pricing pricing,
            @Reference CostSettings settings,
            @Reference Kitchen kitchen,
            @Reference Experiments experiments) {
        this.pricing = pricing;
        this.settings = settings;
        this.kitchen = kitchen;
        this.experiments = experiments;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("price", "What to charge, from one of four targets", "[ID]")
                .with("--food-cost", "P", "the cost is to be P percent of the price")
                .with("--contribution", "AMOUNT", "so much is to be left after the cost")
                .with("--factor", "F", "the price is to be F times the cost")
                .with("--prime", "P", "cost and hands-on work are to be P percent of the price")
                .with("--cost", "AMOUNT", "instead of a recipe, or in place of its cost")
                .with("--labour", "AMOUNT", "hands-on work of one portion")
                .with("--tax", "P", "tax in percent; without it, the recipe's")
                .with("--tax-out", "", "the menu's prices are without tax")
                .with("--round", "up|nearest|down", "to which side; without it, the house's way")
                .with("--endings", "LIST", "what prices may end in, such as .50,.95; none for any")
                .with("--accept", "", "write the price into the book, in one step that can be undone");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        try {
            PriceAdvice advice = pricing.advise(question(call));
            boolean accepted = call.has("--accept");
            List<String> notes = new ArrayList<>(advice.notes());
            if (accepted) {
                notes.addAll(accept(call, advice));
            }
            boolean look = advice.lowerBound()
                    || advice.contribution().signum() < 0
                    || notes.size() > advice.notes().size();
            Map<String, Object> json = json(advice);
            json.put("notes", notes);
            json.put("accepted", accepted);
            return new Report(look ? Outcome.LOOK : Outcome.DONE, json, lines(advice, notes));
        } catch (IllegalArgumentException wrong) {
            throw VerbException.wrongCall(wrong.getMessage());
        }
    }

    /** Only a price reckoned from the recipe's own cost, as menus state it, goes on its menu. */
    private List<String> accept(VerbCall call, PriceAdvice advice) throws VerbException {
        if (call.arguments().isEmpty() || call.option("--cost").isPresent() || call.has("--tax-out")) {
            throw VerbException.wrongCall(
                    "--accept writes the price of a recipe at its own cost: name one, without --cost and --tax-out.");
        }
        Experiment experiment = Experiment.none()
                .withMenuPrice(call.arguments().get(0), advice.menu().amount());
        return experiments.accept(experiment);
    }

    private PriceQuestion question(VerbCall call) throws VerbException {
        CallWords words = new CallWords(call);
        PriceTarget target = target(words);
        Optional<Money> cost = words.money("--cost", kitchen.house().currency());
        if (call.arguments().isEmpty() && cost.isEmpty()) {
            throw VerbException.wrongCall("Name a recipe, or say what one portion costs with --cost.");
        }
        PriceQuestion question = call.arguments().isEmpty()
                ? PriceQuestion.of(cost.orElseThrow(), BigDecimal.ZERO, target, PriceRounding.of(settings.rules()))
                : pricing.about(call.arguments().get(0), target);
        if (cost.isPresent()) {
            question = question.withCost(cost.get());
        }
        Optional<Money> labour = words.money("--labour", kitchen.house().currency());
        if (labour.isPresent()) {
            question = question.withLabour(labour.get());
        }
        BigDecimal tax = words.number("--tax").orElse(question.taxPercent());
        return question.withTax(tax, !call.has("--tax-out")).withRounding(rounding(call, question.rounding()));
    }

    private static PriceTarget target(CallWords words) throws VerbException {
        Map<String, BigDecimal> given = new LinkedHashMap<>();
        for (String option : TARGETS) {
            words.number(option).ifPresent(value -> given.put(option, value));
        }
        if (given.size() != 1) {
            throw VerbException.wrongCall("Give one target: " + String.join(", ", TARGETS) + ".");
        }
        BigDecimal value = given.values().iterator().next();
        return switch (given.keySet().iterator().next()) {
            case "--food-cost" -> new PriceTarget.FoodCost(value);
            case "--contribution" -> new PriceTarget.Contribution(value);
            case "--factor" -> new PriceTarget.Factor(value);
            default -> new PriceTarget.PrimeCost(value);
        };
    }

    private static PriceRounding rounding(VerbCall call, PriceRounding usual) throws VerbException {
        List<BigDecimal> endings = call.option("--endings").isPresent()
                ? endings(call.option("--endings").get())
                : usual.endings();
        PriceRounding.Way fitting = call.has("--endings") && !endings.isEmpty() ? PriceRounding.Way.UP : usual.way();
        String way = call.option("--round").orElse(fitting.name());
        for (PriceRounding.Way known : PriceRounding.Way.values()) {
            if (known.name().equalsIgnoreCase(way.strip())) {
                return new PriceRounding(known, endings);
            }
        }
        throw VerbException.wrongCall("--round is up, nearest or down, not “" + way + "”.");
    }

    private static List<BigDecimal> endings(String text) throws VerbException {
        if (text.strip().equalsIgnoreCase("none")) {
            return List.of();
        }
        try {
            return Stream.of(text.split("[,;\\s]+"))
                    .filter(part -> !part.isEmpty())
                    .map(BigDecimal::new)
                    .toList();
        } catch (NumberFormatException unreadable) {
            throw VerbException.wrongCall("--endings wants a list such as .50,.95, not “" + text + "”.");
        }
    }

    private static Map<String, Object> json(PriceAdvice advice) {
        Map<String, Object> json = new LinkedHashMap<>();
        PriceQuestion question = advice.question();
        json.put("id", question.recipe());
        json.put("cost", Amounts.amount(question.cost()));
        question.labour().ifPresent(work -> json.put("labour", Amounts.amount(work)));
        json.put("net", Amounts.amount(advice.net()));
        json.put("gross", Amounts.amount(advice.gross()));
        json.put("rounded", advice.menu().toString());
        json.put("roundedNet", Amounts.amount(advice.menuNet()));
        json.put("taxPercent", question.taxPercent().toPlainString());
        json.put("taxIncluded", question.taxIncluded());
        json.put("rounding", rule(advice));
        json.put("foodCostPercent", advice.foodCostPercent().map(BigDecimal::toPlainString));
        advice.primeCostPercent().ifPresent(percent -> json.put("primeCostPercent", percent.toPlainString()));
        json.put("contribution", Amounts.amount(advice.contribution()));
        return json;
    }

    private static String rule(PriceAdvice advice) {
        return new MenuRounding(
                        advice.question().rounding(), advice.question().cost().currency())
                .words();
    }

    private static List<String> lines(PriceAdvice advice, List<String> notes) {
        List<String> lines = new ArrayList<>();
        advice.explained()
                .parts()
                .forEach(part -> lines.add(
                        String.format(Locale.ROOT, "%-24s %14s  %s", part.title(), part.value(), part.source())
                                .stripTrailing()));
        lines.add("Reckoned exactly and rounded once, " + rule(advice) + ".");
        notes.forEach(note -> lines.add("Look: " + note));
        return lines;
    }
}
