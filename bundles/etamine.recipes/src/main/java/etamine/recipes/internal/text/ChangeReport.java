package etamine.recipes.internal.text;

import etamine.base.Problem;
import etamine.base.verb.Report;
import etamine.base.verb.VerbException;
import etamine.recipes.Change;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What became of a change, for the console. */
public final class ChangeReport {
    private ChangeReport() {}

    /** A report of what was done; a refusal is rejected input. */
    public static Report of(Change change, String done) throws VerbException {
        if (change instanceof Change.Refused refused) {
            throw VerbException.rejected(
                    refused.problems().stream().map(Problem::text).collect(Collectors.joining(" ")));
        }
        Change.Done made = (Change.Done) change;
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", made.id());
        json.put("revision", made.revision());
        return Report.done(json, List.of(done));
    }
}
