package etamine.recipes.internal.card;

import etamine.base.Printout;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.measures.MeasureException;
import etamine.measures.Quantity;
import etamine.measures.QuantityText;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.Cards;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Writes a card for paper: {@code card ID [--portions N | --to QUANTITY]}. */
@Component
public final class PrintVerb implements Verb {
    private final Cards cards;

    /** Writes those cards. */
    @Activate
    public PrintVerb(@Reference Cards cards) {
        this.cards = cards;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("card", "a recipe or plate card as PDF or HTML", "ID")
                .with("--portions", "N", "for how many portions")
                .with("--to", "QUANTITY", "for how much, such as \"3 l\"")
                .with("--paper", "SHEET", "a4 or letter")
                .with("--large", "", "in large print, for the wall")
                .with("--no-photo", "", "without its photo")
                .with("--format", "FORM", "pdf or html; pdf unless the file ends with html")
                .with("--out", "FILE", "where it goes; ID.pdf here unless said");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        if (call.arguments().size() != 1) {
            throw VerbException.wrongCall("Name one recipe: card ID.");
        }
        String id = call.arguments().get(0);
        Cards.Card card = cards.card(id, terms(call, cards.usual()));
        if (!(card instanceof Cards.Card.Laid laid)) {
            throw VerbException.wrongCall(((Cards.Card.Impossible) card).text());
        }
        boolean html = html(call);
        Path file = call.file(call.option("--out").orElse(id + (html ? ".html" : ".pdf")));
        write(laid.printout(), html, file);
        List<String> lines = new ArrayList<>(laid.remarks());
        lines.add("Wrote the card of " + laid.printout().title() + " to " + file + ".");
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", id);
        json.put("file", file.toString());
        json.put("remarks", laid.remarks());
        return Report.done(json, lines);
    }

    /** The terms that a call asks for. */
    static Cards.Terms terms(VerbCall call, Cards.Terms usual) throws VerbException {
        return usual.on(sheet(call).orElse(usual.sheet()))
                .large(call.has("--large"))
                .forAmount(amount(call))
                .withPhoto(!call.has("--no-photo"));
    }

    private static Optional<Cards.Sheet> sheet(VerbCall call) throws VerbException {
        Optional<String> named = call.option("--paper");
        for (Cards.Sheet sheet : Cards.Sheet.values()) {
            if (named.filter(name -> name.equalsIgnoreCase(sheet.name())).isPresent()) {
                return Optional.of(sheet);
            }
        }
        if (named.isPresent()) {
            throw VerbException.wrongCall("There is no paper " + named.get() + " here; choose a4 or letter.");
        }
        return Optional.empty();
    }

    private static Optional<Quantity> amount(VerbCall call) throws VerbException {
        if (call.has("--portions") && call.has("--to")) {
            throw VerbException.wrongCall("Say either --portions N or --to QUANTITY.");
        }
        try {
            Optional<Quantity> portions =
                    call.option("--portions").map(number -> new Quantity(Ratio.parse(number), Unit.PORTION));
            return portions.or(() -> call.option("--to").map(QuantityText::parse));
        } catch (MeasureException unreadable) {
            throw VerbException.wrongCall(unreadable.getMessage());
        }
    }

    private static boolean html(VerbCall call) throws VerbException {
        String form = call.option("--format")
                .orElseGet(() -> call.option("--out")
                                .filter(file -> file.toLowerCase(Locale.ROOT).endsWith(".html"))
                                .isPresent()
                        ? "html"
                        : "pdf");
        if (!form.equalsIgnoreCase("pdf") && !form.equalsIgnoreCase("html")) {
            throw VerbException.wrongCall("There is no form " + form + "; choose pdf or html.");
        }
        return form.equalsIgnoreCase("html");
    }

    private static void write(Printout printout, boolean html, Path file) throws VerbException {
        try {
            if (html) {
                printout.html(file);
            } else {
                printout.pdf(file);
            }
        } catch (IOException failed) {
            throw VerbException.wrongCall(file + " cannot be written: " + failed.getMessage() + ".");
        }
    }
}
