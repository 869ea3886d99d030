package etamine.recipes.internal.weight;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.measures.Quantity;
import etamine.recipes.Balances;
import etamine.recipes.MassBalance;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.text.CardText;
import etamine.recipes.internal.text.CardVerb;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Weighs a recipe on the console: {@code balance ID}. */
@Component
public final class BalanceVerb implements Verb {
    private final RecipeShelf shelf;
    private final Balances balances;
    private final CardText cards;

    /** Weighs recipes of that shelf. */
    @Activate
    public BalanceVerb(@Reference RecipeShelf shelf, @Reference Balances balances, @Reference CardText cards) {
        this.shelf = shelf;
        this.balances = balances;
        this.cards = cards;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("balance", "weight in against weight out of a recipe", "ID");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        MassBalance balance = balances.of(CardVerb.recipe(shelf, call));
        return new Report(balance.complete() ? Outcome.DONE : Outcome.LOOK, json(balance), lines(balance));
    }

    private static Map<String, Object> json(MassBalance balance) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("bought", balance.bought().toString());
        json.put("trim", balance.trim().toString());
        json.put("added", balance.added().toString());
        json.put("in", balance.in().toString());
        json.put("out", balance.out().toString());
        balance.lost().ifPresent(lost -> json.put("lost", lost.toString()));
        List<Map<String, Object>> lines = new ArrayList<>();
        balance.inputs().forEach(input -> lines.add(line(input.item(), input.bought(), input.used())));
        json.put("inputs", lines);
        json.put("unweighed", balance.unweighed());
        return json;
    }

    private static Map<String, Object> line(String item, Optional<Quantity> bought, Optional<Quantity> used) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put("item", item);
        bought.ifPresent(weight -> line.put("bought", weight.toString()));
        used.ifPresent(weight -> line.put("used", weight.toString()));
        return line;
    }

    private List<String> lines(MassBalance balance) {
        TextTable table = new TextTable("", ">bought", ">trim", ">used");
        balance.inputs()
                .forEach(input -> table.row(
                        input.name(),
                        shown(input.bought()),
                        trim(input).map(cards::quantity).orElse(""),
                        shown(input.used())));
        table.row("water taken up", "", "", cards.quantity(balance.added()));
        table.row(
                "goes in",
                cards.quantity(balance.bought()),
                cards.quantity(balance.trim()),
                cards.quantity(balance.in()));
        balance.outputs().forEach(output -> table.row("gives " + output.name(), "", "", shown(output.weight())));
        balance.lost().ifPresent(lost -> table.row("lost in the making", "", "", cards.quantity(lost)));
        List<String> lines = new ArrayList<>(table.lines());
        balance.unweighed().forEach(text -> lines.add("not weighed: " + text));
        return lines;
    }

    private static Optional<Quantity> trim(MassBalance.Input input) {
        return input.bought().flatMap(bought -> input.used().map(bought::minus)).filter(lost -> lost.signum() > 0);
    }

    private String shown(Optional<Quantity> weight) {
        return weight.map(cards::quantity).orElse("?");
    }
}
