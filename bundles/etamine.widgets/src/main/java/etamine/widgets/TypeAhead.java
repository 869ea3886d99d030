package etamine.widgets;

import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.jface.bindings.keys.KeyStroke;
import org.eclipse.jface.fieldassist.ContentProposalAdapter;
import org.eclipse.jface.fieldassist.IContentProposalProvider;
import org.eclipse.jface.fieldassist.TextContentAdapter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;

/**
 * Completions in a list below a field. Tab closes the list and goes to the next field; by itself the list would take
 * the keyboard and the row would count as left.
 */
final class TypeAhead extends ContentProposalAdapter {

    private TypeAhead(Text text, IContentProposalProvider provider, String characters) {
        super(
                text,
                new TextContentAdapter(),
                provider,
                KeyStroke.getInstance(SWT.NONE, SWT.ARROW_DOWN),
                characters.toCharArray());
        setProposalAcceptanceStyle(PROPOSAL_REPLACE);
        setPropagateKeys(true);
    }

    /** Completes what is typed into the field; the list opens by the arrow down key and by these characters. */
    static TypeAhead on(Text text, IContentProposalProvider provider, String characters) {
        AtomicReference<TypeAhead> made = new AtomicReference<>();
        text.addListener(SWT.Traverse, event -> {
            boolean tab = event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
            if (tab && made.get().isProposalPopupOpen()) {
                made.get().closeProposalPopup();
            }
        });
        made.set(new TypeAhead(text, provider, characters));
        return made.get();
    }
}
