package etamine.recipes.internal.linked;

import etamine.base.verb.Report;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.recipes.RecipeFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Writes recipes for other programs: {@code recipes-export FILE [ID...]}. */
@Component
public final class ExportVerb implements Verb {
    private final RecipeFiles files;

    /** Writes with that. */
    @Activate
    public ExportVerb(@Reference RecipeFiles files) {
        this.files = files;
    }

    @Override
    public VerbUsage usage() {
        return VerbUsage.of("recipes-export", "recipes as schema.org JSON-LD, all or those named", "FILE", "[ID...]");
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        if (call.arguments().isEmpty()) {
            throw VerbException.wrongCall("Name the file to write: recipes-export FILE [ID...].");
        }
        Path file = call.file(call.arguments().get(0));
        try {
            List<String> ids =
                    files.write(call.arguments().subList(1, call.arguments().size()), file);
            String count = ids.size() == 1 ? "1 recipe" : ids.size() + " recipes";
            return Report.done(
                    Map.of("file", file.toString(), "recipes", ids), List.of("Wrote " + count + " to " + file + "."));
        } catch (IllegalArgumentException wrong) {
            throw VerbException.wrongCall(wrong.getMessage());
        } catch (IOException failed) {
            throw VerbException.wrongCall(file + " cannot be written: " + failed.getMessage() + ".");
        }
    }
}
