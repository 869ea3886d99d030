package etamine.shell.app.internal;

import etamine.base.Progress;
import etamine.kitchen.house.DemoKitchen;
import etamine.shell.Frame;
import etamine.storage.Book;
import etamine.storage.BookException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/** What can be done with whole books; all of it in the background. */
final class BookDesk {
    private static final String ENDING = ".etamine";
    private static final long PATIENCE = 10_000;
    private final Shell shell;
    private final Gathering gathering;
    private final WorkLine work;
    private boolean busy;
    private Runnable onState = () -> {};
    private String state = "No book is open. A book holds everything of one kitchen.";

    BookDesk(Shell shell, Gathering gathering, WorkLine work) {
        this.shell = shell;
        this.gathering = gathering;
        this.work = work;
    }

    /** Called when the words on the page without a book should be others. */
    void onState(Runnable listener) {
        onState = listener;
    }

    /** Opens the book the program was started with. */
    void openFirst(WindowSettings settings) {
        if (gathering.books().latest().isEmpty()) {
            settings.book()
                    .ifPresent(location -> run(
                            "Opening " + called(location),
                            progress -> settings.demo()
                                    ? openOrDemo(location)
                                    : gathering.session().open(location)));
        }
    }

    void create() {
        ask(SWT.SAVE, "Where the new book goes", "kitchen" + ENDING)
                .ifPresent(file -> run(
                        "Making " + called(file),
                        progress -> gathering.session().create(file)));
    }

    void open() {
        ask(SWT.OPEN, "Open another book", "")
                .ifPresent(file -> run(
                        "Opening " + called(file),
                        progress -> gathering.session().open(file)));
    }

    void demo() {
        ask(SWT.SAVE, "Where the demo kitchen goes", "demo" + ENDING)
                .ifPresent(file -> run(
                        "Setting up the demo kitchen",
                        progress -> fill(gathering.session().create(file))));
    }

    boolean hasDemo() {
        return gathering.demos().latest().isPresent();
    }

    void backup() {
        gathering
                .books()
                .latest()
                .ifPresentOrElse(
                        book -> ask(SWT.SAVE, "Where the copy goes", "copy" + ENDING)
                                .ifPresent(file -> copy(book, file)),
                        () -> work.warn("Open a book first."));
    }

    void undo() {
        history(
                "Undo",
                book -> book.history().undo().map(label -> "Undone: " + label + "."),
                "There is nothing to undo.");
    }

    void redo() {
        history(
                "Redo",
                book -> book.history().redo().map(label -> "Done again: " + label + "."),
                "There is nothing to redo.");
    }

    /** The page shown while no book is open. */
    Composite welcome(Composite parent) {
        Composite note = Notes.build(parent, "Etamine", state);
        if (busy) {
            return note;
        }
        Notes.button(note, "Open a book\u2026", "book:open", this::open);
        Notes.button(note, "Make a new book\u2026", "book:new", this::create);
        if (hasDemo()) {
            Notes.button(note, "Try the demo kitchen\u2026", "book:demo", this::demo);
        }
        return note;
    }

    private void run(String label, Frame.Job<Book> job) {
        busy = true;
        state(label + "\u2026");
        work.run(
                label,
                progress -> opened(job, progress),
                result -> {
                    busy = false;
                    state(result.orElse("No book is open."));
                    result.ifPresentOrElse(work::warn, () -> work.say(""));
                },
                () -> !shell.isDisposed());
    }

    private static Optional<String> opened(Frame.Job<Book> job, Progress progress) throws Exception {
        try {
            job.run(progress);
            return Optional.empty();
        } catch (BookException problem) {
            return Optional.of(Sentences.of(problem));
        } catch (RuntimeException | LinkageError problem) {
            Trouble.note("opening a book", problem);
            return Optional.of("The book could not be opened: " + Sentences.of(problem));
        }
    }

    private Book openOrDemo(String location) throws InterruptedException {
        try {
            return gathering.session().open(location);
        } catch (BookException problem) {
            if (problem.reason() != BookException.Reason.MISSING) {
                throw problem;
            }
            return fill(gathering.session().create(location));
        }
    }

    private Book fill(Book book) throws InterruptedException {
        DemoKitchen demo = gathering
                .demos()
                .await(PATIENCE)
                .orElseThrow(() -> new BookException(
                        BookException.Reason.OTHER, "The demo kitchen is not installed; the new book is empty."));
        demo.into(book);
        return book;
    }

    private void copy(Book book, String file) {
        work.run(
                "Copying the book",
                progress -> {
                    book.backup(Path.of(file), progress);
                    return file;
                },
                done -> work.say("The book was copied to " + done + " and the copy was checked."),
                () -> !shell.isDisposed());
    }

    private void history(String label, Function<Book, Optional<String>> step, String nothing) {
        gathering
                .books()
                .latest()
                .ifPresent(book -> work.run(
                        label,
                        progress -> step.apply(book),
                        done -> work.say(done.orElse(nothing)),
                        () -> !shell.isDisposed()));
    }

    private Optional<String> ask(int style, String title, String name) {
        FileDialog dialog = new FileDialog(shell, style);
        dialog.setText(title);
        dialog.setFilterNames(new String[] {"Books (*" + ENDING + ")", "All files"});
        dialog.setFilterExtensions(new String[] {"*" + ENDING, "*"});
        dialog.setFileName(name);
        return Optional.ofNullable(dialog.open());
    }

    private void state(String text) {
        state = text;
        onState.run();
    }

    private static String called(String location) {
        return location.startsWith("jdbc:")
                ? "the book on the server"
                : String.valueOf(Path.of(location).getFileName());
    }
}
