package etamine.widgets;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Short questions. */
public final class Prompt {
    private Prompt() {}

    /** Asks before something that is not easily taken back; {@code button} says what will happen. */
    public static boolean confirm(Shell parent, String title, String sentence, String button) {
        return new FormDialog(parent, title, form -> form.remark(sentence))
                .button(button)
                .ask();
    }

    /**
     * Asks for a line of text.
     *
     * @param problem what is wrong with a text, if anything
     */
    public static Optional<String> line(
            Shell parent, String title, String label, String initial, Function<String, Optional<String>> problem) {
        AtomicReference<Text> field = new AtomicReference<>();
        AtomicReference<String> answer = new AtomicReference<>("");
        boolean accepted = new FormDialog(parent, title, form -> {
                    Text text = form.text(label, "field:line");
                    text.setText(initial);
                    text.selectAll();
                    field.set(text);
                })
                .check(() -> problem.apply(field.get().getText().strip()))
                .onAccept(() -> answer.set(field.get().getText().strip()))
                .ask();
        return accepted ? Optional.of(answer.get()) : Optional.empty();
    }
}
