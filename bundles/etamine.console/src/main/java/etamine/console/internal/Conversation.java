package etamine.console.internal;

import etamine.base.Progress;
import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.storage.BookException;
import etamine.storage.BookException.Reason;
import etamine.storage.BookSession;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One call from its words to its exit status. */
final class Conversation {
    /** The exit status when the program broke down. */
    static final int BROKEN = 70;

    private final Verbs verbs;
    private final BookSession session;
    private final Surroundings surroundings;
    private final Printer printer;

    Conversation(Verbs verbs, BookSession session, Surroundings surroundings, Printer printer) {
        this.verbs = verbs;
        this.session = session;
        this.surroundings = surroundings;
        this.printer = printer;
    }

    /** Does what the line says; whatever happens is printed, never thrown. */
    int hold(List<String> words) {
        try {
            CallLine line = line(words);
            surroundings
                    .failures()
                    .forEach((module, reason) -> printer.remark(
                            "the module " + module + " did not start (" + reason + "); the others work."));
            return printer.report(answer(line));
        } catch (VerbException e) {
            return printer.failure(e.outcome().status(), String.valueOf(e.getMessage()));
        } catch (BookException e) {
            return broken(e, Outcome.WRONG_CALL.status(), String.valueOf(e.getMessage()));
        } catch (RuntimeException | LinkageError | StackOverflowError | OutOfMemoryError e) {
            return broken(
                    e,
                    BROKEN,
                    "this should not have happened (" + e + "); nothing half done was kept. Run it"
                            + " again with ETAMINE_DEBUG=1 and report what it prints.");
        }
    }

    private CallLine line(List<String> words) throws VerbException {
        try {
            CallLine line = CallLine.of(words);
            printer.follow(line);
            return line;
        } catch (VerbException e) {
            boolean json = words.contains("--json");
            printer.follow(new CallLine(Optional.empty(), json, false, false, false, List.of()));
            throw e;
        }
    }

    private int broken(Throwable cause, int status, String sentence) {
        int ended = printer.failure(status, sentence);
        if (surroundings.debug()) {
            cause.printStackTrace(printer.errors());
        }
        return ended;
    }

    private Report answer(CallLine line) throws VerbException {
        if (line.version()) {
            return Report.done(Map.of("version", surroundings.version()), List.of("Etamine " + surroundings.version()));
        }
        String location = surroundings.location(line.book());
        if (line.help()) {
            return help(line, location);
        }
        if (line.words().isEmpty()) {
            throw VerbException.wrongCall("Say what to do: " + names() + ". etamine --help says more.");
        }
        return run(line, location);
    }

    private Report run(CallLine line, String location) throws VerbException {
        String name = line.words().get(0);
        List<String> rest = line.words().subList(1, line.words().size());
        Verb verb = find(name, location);
        VerbLine parsed = VerbLine.of(verb.usage(), rest);
        return verb.run(
                new VerbCall(parsed.arguments(), parsed.options(), location, surroundings.folder(), Progress.unseen()));
    }

    /** Looks among the verbs that need no book first, then opens the book and looks again. */
    private Verb find(String name, String location) throws VerbException {
        Optional<Verb> verb = verbs.find(name);
        if (verb.isPresent()
                && (!verb.get().usage().needsBook() || session.current().isPresent())) {
            return verb.get();
        }
        if (name.startsWith("-")) {
            throw VerbException.wrongCall("There is no option " + name + " before the verb; etamine --help lists all.");
        }
        open(name, location);
        return verbs.find(name).orElseThrow(() -> unknown(name));
    }

    private void open(String name, String location) throws VerbException {
        try {
            session.open(location).readOnly().ifPresent(why -> printer.remark("the book may only be read: " + why));
        } catch (BookException e) {
            if (e.reason() != Reason.MISSING) {
                throw e;
            }
            if (KnownVerbs.module(name).isEmpty()) {
                throw unknown(name);
            }
            throw VerbException.wrongCall("There is no book at " + location
                    + "; make one with 'etamine new', 'etamine demo' or 'etamine load FILE', or say --book FILE.");
        }
    }

    private VerbException unknown(String name) {
        return KnownVerbs.module(name)
                .map(module -> VerbException.wrongCall("The verb " + name + " comes with the module " + module
                        + ", which is not installed or did not start; install it first. There are: " + names() + "."))
                .orElseGet(() -> VerbException.wrongCall("There is no verb " + name + ". There are: " + names() + "."));
    }

    private String names() {
        return String.join(
                ", ", verbs.all().stream().map(verb -> verb.usage().name()).toList());
    }

    private Report help(CallLine line, String location) throws VerbException {
        boolean open = tryToOpen(location);
        if (!line.words().isEmpty()) {
            String name = line.words().get(0);
            VerbUsage usage = verbs.find(name).orElseThrow(() -> unknown(name)).usage();
            return Report.done(HelpPage.json(usage), HelpPage.lines(usage));
        }
        List<VerbUsage> usages = verbs.all().stream().map(Verb::usage).toList();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("book", location);
        json.put("verbs", usages.stream().map(HelpPage::json).toList());
        return Report.done(json, HelpPage.lines(usages, location, open));
    }

    private boolean tryToOpen(String location) {
        try {
            session.open(location);
            return true;
        } catch (BookException notNow) {
            return false; // help is given without it
        }
    }
}
