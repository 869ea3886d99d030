package etamine.widgets;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.jface.fieldassist.ContentProposal;
import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/**
 * One of many, by typing part of its name. Arrow down opens the list; what is typed in full, or matches only one,
 * counts as chosen.
 */
public final class ChoiceField extends EntryField<Choice> {
    private static final String CHARACTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789\b";
    private static final int SHOWN = 200;
    private final TypeAhead proposals;
    private List<Choice> choices;

    /** An empty field over these choices. */
    public ChoiceField(Composite parent, List<Choice> choices) {
        super(parent, "Type to find, or press the down arrow");
        this.choices = List.copyOf(choices);
        proposals = TypeAhead.on(control(), (typed, position) -> proposals(typed), CHARACTERS);
        proposals.setAutoActivationDelay(80);
        control().addListener(SWT.FocusOut, event -> complete());
        control().addListener(SWT.Resize, event -> sizePopup());
    }

    /** Offers other choices, keeping what is typed. */
    public void setChoices(List<Choice> newChoices) {
        choices = List.copyOf(newChoices);
        String typed = text();
        control().setText("");
        control().setText(typed);
    }

    /** Chooses by id; an unknown id empties the field. */
    public void choose(String id) {
        set(choices.stream().filter(choice -> choice.id().equals(id)).findFirst());
    }

    /** The id of what is chosen. */
    public Optional<String> id() {
        return value().map(Choice::id);
    }

    @Override
    protected Choice read(String typed) {
        Optional<Choice> exact = choices.stream()
                .filter(choice -> choice.label().equalsIgnoreCase(typed))
                .findFirst();
        if (exact.isPresent()) {
            return exact.get();
        }
        List<Choice> near = matching(typed).limit(2).toList();
        if (near.size() == 1) {
            return near.get(0);
        }
        throw new IllegalArgumentException(
                near.isEmpty() ? "Nothing here is called that." : "Several fit; choose one of the list.");
    }

    @Override
    protected String write(Choice value) {
        return value.label();
    }

    private void complete() {
        value().ifPresent(choice -> setText(choice.label()));
    }

    private Stream<Choice> matching(String typed) {
        String part = typed.strip().toLowerCase(Locale.ROOT);
        Stream<Choice> starting = choices.stream().filter(choice -> low(choice).startsWith(part));
        Stream<Choice> within = choices.stream()
                .filter(choice -> !low(choice).startsWith(part) && low(choice).contains(part));
        return Stream.concat(starting, within);
    }

    private static String low(Choice choice) {
        return choice.label().toLowerCase(Locale.ROOT);
    }

    private IContentProposal[] proposals(String typed) {
        boolean complete =
                value().filter(choice -> choice.label().equals(typed)).isPresent();
        Stream<Choice> offered = complete ? choices.stream() : matching(typed);
        return offered.limit(SHOWN)
                .map(choice -> new ContentProposal(choice.label()))
                .toArray(IContentProposal[]::new);
    }

    private void sizePopup() {
        proposals.room(Math.max(220, control().getSize().x), 220);
    }
}
