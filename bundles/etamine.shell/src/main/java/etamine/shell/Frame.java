package etamine.shell;

import etamine.base.Explanation;
import etamine.base.Printout;
import etamine.base.Progress;
import etamine.base.Subject;
import java.time.LocalDate;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Shell;
import org.osgi.annotation.versioning.ProviderType;

/** The window, as a bench sees it. Used on the window's thread only. */
@ProviderType
public interface Frame {

    /** The day picked on the week ribbon; today unless somebody picked another. */
    LocalDate day();

    /** Puts an explanation of what is selected on the slate. */
    void explain(Explanation explanation);

    /** Empties the slate. */
    void explainNothing();

    /** Opens the station that shows this and shows it there. */
    void go(Subject subject);

    /**
     * Runs work that may take longer than a few milliseconds, such as anything that writes to the book, on another
     * thread; the window shows that it is busy and offers to stop it. What {@code job} throws is shown as a sentence.
     *
     * @param label what is being done, such as {@code Saving Cream}
     * @param job runs in the background
     * @param then gets the result on the window's thread, unless the bench is gone
     */
    <T> void work(String label, Job<T> job, Consumer<T> then);

    /**
     * Asks for a printer and prints, in the background. Where there is none it says so and offers to save instead.
     */
    void print(Printout printout);

    /** Asks for a file and saves it as PDF, or as a web page where the name ends so, in the background. */
    void save(Printout printout);

    /** Says a sentence in the line at the bottom. */
    void say(String text);

    /** Says that something was not possible, so that it is seen. */
    void warn(String text);

    /** The bench's actions or their state have changed. */
    void actionsChanged();

    /** The window, as a parent for dialogs. */
    Shell window();

    /**
     * Work in the background.
     *
     * @param <T> its result
     */
    @FunctionalInterface
    interface Job<T> {
        /** Does it; checks {@code progress.cancelled()} now and then. */
        T run(Progress progress) throws Exception;
    }
}
