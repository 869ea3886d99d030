package etamine.console.internal;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import java.io.PrintStream;
import java.util.Map;

/**
 * Where reports and messages go. With JSON, standard output gets exactly one value, whatever happens. A reader that
 * went away is no failure: print streams pass over it.
 */
final class Printer {
    private final PrintStream out;
    private final PrintStream err;
    private boolean json;
    private boolean quiet;

    Printer(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    /** Prints as the call asks from now on. */
    void follow(CallLine line) {
        json = line.json();
        quiet = line.quiet();
    }

    /** Prints a report and gives its exit status. */
    int report(Report report) {
        if (json) {
            line(out, JsonText.of(report.json()));
            if (report.outcome() != Outcome.DONE && !quiet) {
                report.lines().forEach(text -> line(err, text));
            }
        } else if (report.outcome() == Outcome.REJECTED || report.outcome() == Outcome.WRONG_CALL) {
            report.lines().forEach(text -> line(err, text));
        } else if (!quiet) {
            report.lines().forEach(text -> line(out, text));
        }
        flush();
        return report.outcome().status();
    }

    /** Says why there is no report and gives the exit status. */
    int failure(int status, String sentence) {
        if (json) {
            line(out, JsonText.of(Map.of("error", sentence)));
        }
        line(err, "etamine: " + sentence);
        flush();
        return status;
    }

    /** A remark beside the report. */
    void remark(String text) {
        if (!quiet) {
            line(err, "etamine: " + text);
        }
    }

    /** Where a stack trace goes when somebody asked for it. */
    PrintStream errors() {
        return err;
    }

    private static void line(PrintStream stream, String text) {
        stream.print(text);
        stream.print('\n');
    }

    private void flush() {
        out.flush();
        err.flush();
    }
}
