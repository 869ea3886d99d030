package etamine.costing.internal.paper;

import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.costing.CostPaper;
import etamine.costing.CostPapers;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** Writes the files that costing's verbs are asked for. */
@Component(service = PaperDesk.class)
public final class PaperDesk {
    private static final List<String> KINDS = List.of("pdf", "html", "csv", "xlsx");

    @Reference(
            cardinality = ReferenceCardinality.OPTIONAL,
            policy = ReferencePolicy.DYNAMIC,
            policyOption = ReferencePolicyOption.GREEDY)
    volatile @Nullable CostPapers papers;

    /** The same usage with an option for each kind of file. */
    public static VerbUsage with(VerbUsage usage) {
        return usage.with("--pdf", "FILE", "write it as a page")
                .with("--html", "FILE", "write it as a page for a browser")
                .with("--csv", "FILE", "write the table as text")
                .with("--xlsx", "FILE", "write the table for a spreadsheet");
    }

    /** Whether a file is asked for. */
    public static boolean asked(VerbCall call) {
        return KINDS.stream().anyMatch(kind -> call.has("--" + kind));
    }

    /** Writes what the options ask for; gives the files written. */
    public List<String> write(VerbCall call, Function<CostPapers, CostPaper> of) throws VerbException {
        List<String> files = new ArrayList<>();
        for (String kind : KINDS) {
            if (call.option("--" + kind).isPresent()) {
                files.add(write(call, kind, of));
            }
        }
        return files;
    }

    private String write(VerbCall call, String kind, Function<CostPapers, CostPaper> of) throws VerbException {
        CostPapers ready = papers;
        if (ready == null) {
            throw VerbException.rejected("Files cannot be written now: start the module etamine.documents.");
        }
        String name = call.option("--" + kind).orElseThrow();
        Path file = call.file(name.toLowerCase(Locale.ROOT).endsWith("." + kind) ? name : name + "." + kind);
        try {
            of.apply(ready).write(file);
            return file.toString();
        } catch (IOException failed) {
            throw VerbException.rejected("“" + file + "” cannot be written: " + failed.getMessage()
                    + ". Name a file in a folder that is there.");
        } catch (IllegalArgumentException wrong) {
            throw VerbException.wrongCall(wrong.getMessage());
        }
    }
}
