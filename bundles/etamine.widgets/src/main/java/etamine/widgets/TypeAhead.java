package etamine.widgets;

import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.jface.bindings.keys.KeyStroke;
import org.eclipse.jface.fieldassist.ContentProposalAdapter;
import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.jface.fieldassist.IContentProposalProvider;
import org.eclipse.jface.fieldassist.TextContentAdapter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;

/**
 * Completions in a list below a field. Tab closes the list and goes to the next field; by itself the list would take
 * the keyboard and the row would count as left. A list that comes late, when the keyboard is elsewhere already, does not
 * open: it would lie over everything until somebody clicked it away.
 */
final class TypeAhead extends ContentProposalAdapter {

    private static final String LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ, \b";

    private final Text text;
    private int width = 260;
    private int most = 180;

    private TypeAhead(Text text, IContentProposalProvider provider, KeyStroke key, String characters) {
        super(text, new TextContentAdapter(), null, key, characters.toCharArray());
        this.text = text;
        setContentProposalProvider(timely(provider));
        setProposalAcceptanceStyle(PROPOSAL_REPLACE);
        setPropagateKeys(true);
        text.addListener(SWT.FocusOut, event -> text.getDisplay().asyncExec(() -> closeAfter()));
    }

    /** How wide the list is, and how high at most; a short one takes no more height than it needs. */
    void room(int wide, int high) {
        width = wide;
        most = high;
    }

    private IContentProposalProvider timely(IContentProposalProvider provider) {
        return (typed, position) -> {
            IContentProposal[] found = isElsewhere() ? new IContentProposal[0] : provider.getProposals(typed, position);
            boolean said = found.length == 1 && found[0].getContent().equals(typed);
            if (!text.isDisposed() && !isProposalPopupOpen()) {
                setPopupSize(new Point(width, Math.min(most, found.length * text.getLineHeight() * 3 / 2 + 16)));
            }
            return said ? new IContentProposal[0] : found;
        };
    }

    private boolean isElsewhere() {
        Control focus = text.isDisposed() ? null : text.getDisplay().getFocusControl();
        return text.isDisposed() || focus != null && focus != text && focus.getShell() == text.getShell();
    }

    private void closeAfter() {
        if (isElsewhere() && isProposalPopupOpen()) {
            closeProposalPopup();
        }
    }

    /** Completes what is typed into the field; the list opens by the arrow down key and by these characters. */
    static TypeAhead on(Text text, IContentProposalProvider provider, String characters) {
        return on(text, provider, KeyStroke.getInstance(SWT.NONE, SWT.ARROW_DOWN), characters);
    }

    /** The same for a field in a list of fields, where the arrows go from one to the next; Ctrl+Space opens the list. */
    static TypeAhead onControlSpace(Text text, IContentProposalProvider provider) {
        TypeAhead made = new TypeAhead(text, provider, KeyStroke.getInstance(SWT.CTRL, ' '), LETTERS);
        made.setAutoActivationDelay(120);
        return made;
    }

    private static TypeAhead on(Text text, IContentProposalProvider provider, KeyStroke key, String characters) {
        AtomicReference<TypeAhead> made = new AtomicReference<>();
        text.addListener(SWT.Traverse, event -> {
            boolean tab = event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
            if (tab && made.get().isProposalPopupOpen()) {
                made.get().closeProposalPopup();
            }
        });
        made.set(new TypeAhead(text, provider, key, characters));
        return made.get();
    }
}
