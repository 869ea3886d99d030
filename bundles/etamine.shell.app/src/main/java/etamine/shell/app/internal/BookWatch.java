package etamine.shell.app.internal;

import etamine.base.Subscription;
import etamine.kitchen.house.Kitchen;
import etamine.storage.Book;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

/** Follows the open book in the background and tells the window what to show of it. */
final class BookWatch implements AutoCloseable {
    private final Gathering gathering;
    private final Ui ui;
    private final Consumer<View> onBook;
    private final Consumer<View> onChange;
    private final ExecutorService thread = Executors.newSingleThreadExecutor(BookWatch::thread);
    private final Runnable changed;
    private Optional<Book> followed = Optional.empty();
    private Optional<Subscription> subscription = Optional.empty();

    /**
     * What the window shows of a book.
     *
     * @param open whether there is one
     * @param title of the window
     * @param readOnly why it cannot be changed
     * @param undoable what undo takes back
     * @param redoable what redo does again
     */
    record View(
            boolean open,
            String title,
            Optional<String> readOnly,
            Optional<String> undoable,
            Optional<String> redoable) {

        static final View NONE = new View(false, "Etamine", Optional.empty(), Optional.empty(), Optional.empty());
    }

    BookWatch(Gathering gathering, Ui ui, Consumer<View> onBook, Consumer<View> onChange) {
        this.gathering = gathering;
        this.ui = ui;
        this.onBook = onBook;
        this.onChange = onChange;
        this.changed = ui.coalesced(80, () -> inBackground(this::tellChange));
    }

    void start() {
        gathering.books().onChange(() -> inBackground(this::follow));
        gathering.kitchens().onChange(() -> inBackground(this::tellBook));
        inBackground(this::follow);
    }

    @Override
    public void close() {
        thread.shutdownNow();
        subscription.ifPresent(Subscription::close);
    }

    private void follow() {
        Optional<Book> latest = gathering.books().latest();
        if (!latest.equals(followed)) {
            subscription.ifPresent(Subscription::close);
            followed = latest;
            subscription = latest.map(book -> book.onCommit(commit -> changed.run()));
        }
        tellBook();
    }

    private void tellBook() {
        View view = view();
        ui.later(() -> onBook.accept(view));
    }

    private void tellChange() {
        View view = view();
        ui.later(() -> onChange.accept(view));
    }

    private View view() {
        if (followed.isEmpty()) {
            return View.NONE;
        }
        Book book = followed.get();
        String house = gathering
                .kitchens()
                .latest()
                .map(Kitchen::house)
                .map(settings -> settings.name() + " \u2013 ")
                .orElse("");
        return new View(
                true,
                house + name(book.location()) + " \u2013 Etamine",
                book.readOnly(),
                book.history().undoable(),
                book.history().redoable());
    }

    private static String name(String location) {
        return location.startsWith("jdbc:")
                ? location.replaceFirst("\\?.*$", "")
                : Path.of(location).getFileName().toString();
    }

    private void inBackground(Runnable task) {
        if (!thread.isShutdown()) {
            thread.execute(() -> {
                try {
                    task.run();
                } catch (RuntimeException closing) {
                    Trouble.note("looking at the book", closing);
                }
            });
        }
    }

    private static Thread thread(Runnable task) {
        Thread thread = new Thread(task, "book watch");
        thread.setDaemon(true);
        return thread;
    }
}
