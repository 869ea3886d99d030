package etamine.bench;

import etamine.costing.internal.engine.RollUpBench;
import etamine.ingredients.ui.internal.ListBench;
import etamine.recipes.internal.AllergenBench;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** Runs the benches named on the command line, or all. */
public final class Benches {

    private Benches() {}

    /** Prints the figures of each bench under its name. */
    public static void main(String[] names) throws Exception {
        Path product = Path.of(System.getProperty("etamine.product"));
        List<Bench> all = List.of(
                new StartBench(product),
                new RollUpBench(),
                new ListBench(),
                new AllergenBench(),
                new BookBench(product),
                new RecipesBench(product));
        Set<String> chosen = Set.of(names);
        try (PrintStream out =
                new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8)) {
            for (Bench bench : all) {
                if (chosen.isEmpty() || chosen.contains(bench.name())) {
                    out.println("== " + bench.name() + " ==");
                    bench.measure().forEach(out::println);
                }
            }
        }
    }
}
