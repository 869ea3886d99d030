package etamine.storage.medium;

import etamine.storage.BookException;
import etamine.storage.MigrationContext;
import etamine.storage.ModuleFormat;
import etamine.storage.ModuleFormat.Migration;
import etamine.storage.Shelf;
import etamine.storage.Transaction;
import java.util.Comparator;
import java.util.List;

/**
 * The way from the format a book has to the one a module wants.
 *
 * @param format what the module wants
 * @param recorded what the book has; 0 if it never met the module
 */
record Migrations(ModuleFormat format, int recorded) {

    boolean bookIsNewer() {
        return recorded > format.version();
    }

    String whyReadOnly() {
        return "The book was written with a newer " + format.module() + " (format " + recorded
                + ", this program knows " + format.version()
                + "), so it may only be read. Update the program to write in it.";
    }

    String label() {
        return "Bring " + format.module() + " to format " + format.version();
    }

    void requireNone(String location) {
        if (!bookIsNewer() && !steps().isEmpty()) {
            throw new BookException(
                    BookException.Reason.READ_ONLY,
                    "What " + format.module() + " keeps in " + location + " is of an older format (" + recorded
                            + ") and cannot be brought to format " + format.version()
                            + " because the book may only be read. Open a copy that can be written.");
        }
    }

    /** Runs the steps in order; each sees what those before it did. */
    List<Migration> run(Medium medium, Draft draft) {
        List<Migration> steps = steps();
        for (Migration step : steps) {
            step.work().accept(new DraftContext(medium, draft, draft.edits()));
        }
        return steps;
    }

    private List<Migration> steps() {
        if (recorded == 0) {
            return List.of();
        }
        return format.migrations().stream()
                .filter(step -> step.from() >= recorded && step.from() < format.version())
                .sorted(Comparator.comparingInt(Migration::from))
                .toList();
    }

    private record DraftContext(Medium medium, Transaction transaction, Edits before) implements MigrationContext {
        @Override
        public Shelf shelf(String name) {
            return new EditedShelf(medium, name, before);
        }
    }
}
