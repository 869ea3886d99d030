package etamine.widgets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.fieldassist.ContentProposal;
import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;

/** One line in view of {@link EntryLines}. */
final class EntryLine {
    private final EntryLines owner;
    private final Text text;
    private final TypeAhead proposals;
    private final Button mark;
    private final List<Label> figures = new ArrayList<>();
    private final Button remove;
    private final Canvas wave;
    private final Link sentence;
    private EntryLines.Line shown = EntryLines.Line.BLANK;
    private boolean walked;

    EntryLine(EntryLines owner, int place) {
        this.owner = owner;
        text = Spoken.id(new Text(owner, SWT.BORDER | SWT.SINGLE), owner.cellId(place, ""));
        Spoken.name(text, "Line");
        proposals = TypeAhead.onControlSpace(text, (typed, position) -> proposals(typed));
        mark = Spoken.id(new Button(owner, SWT.PUSH | SWT.FLAT), owner.cellId(place, "mark"));
        mark.setFont(Fonts.small(owner));
        mark.setToolTipText("Switch between as purchased (AP) and edible portion (EP): F7");
        mark.addListener(SWT.Selection, event -> owner.acts().mark(row()));
        for (int i = 0; i < owner.figureCount(); i++) {
            figures.add(new Label(owner, SWT.RIGHT));
        }
        remove = Spoken.id(new Button(owner, SWT.PUSH | SWT.FLAT), owner.cellId(place, "remove"));
        remove.setImage(Icons.small(owner, "remove"));
        remove.setToolTipText("Remove this line");
        Spoken.name(remove, "Remove this line");
        remove.addListener(SWT.Selection, event -> owner.acts().save(owner.subject(), row(), ""));
        wave = new Canvas(owner, SWT.NO_FOCUS);
        wave.addListener(SWT.Paint, event -> Wave.draw(event, wave, text, shown));
        sentence = Spoken.id(new Link(owner, SWT.WRAP), owner.cellId(place, "trouble"));
        sentence.setFont(Fonts.small(owner));
        sentence.setForeground(Palette.of(owner).text(Tone.BAD));
        sentence.addListener(SWT.Selection, event -> follow(event.text));
        listen();
        visible();
    }

    private void listen() {
        text.addListener(SWT.FocusIn, event -> owner.acts().entered(row()));
        text.addListener(SWT.FocusOut, event -> {
            text.setSelection(0); // what is too long for its field shows its beginning
            leaveLater();
        });
        text.addListener(SWT.DefaultSelection, event -> enter());
        text.addListener(SWT.Modify, event -> remove.setVisible(!text.getText().isBlank()));
        text.addListener(SWT.Verify, this::pasted);
        text.addListener(SWT.Traverse, this::traverse);
        text.addListener(SWT.KeyDown, this::key);
        text.addListener(SWT.MouseVerticalWheel, owner::wheel);
        text.addListener(SWT.Resize, event -> proposals.room(Math.max(300, text.getSize().x), 200));
    }

    private IContentProposal[] proposals(String typed) {
        return owner.acts().complete(typed).stream().map(ContentProposal::new).toArray(IContentProposal[]::new);
    }

    private int row() {
        return owner.row(this);
    }

    void show(EntryLines.Line line) {
        boolean typing = isEdited() && text.isFocusControl();
        shown = line;
        if (!typing && !text.getText().equals(line.text())) {
            text.setText(line.text());
        }
        for (int i = 0; i < figures.size(); i++) {
            figures.get(i).setText(i < line.figures().size() ? line.figures().get(i) : "");
        }
        mark.setText(line.mark());
        sentence.setText(line.trouble().map(EntryLine::said).orElse(""));
        visible();
    }

    private void visible() {
        boolean troubled = shown.trouble().isPresent();
        mark.setVisible(!shown.mark().isEmpty());
        remove.setVisible(!text.getText().isBlank());
        sentence.setVisible(troubled);
        wave.setVisible(troubled);
        wave.redraw();
    }

    private static String said(EntryLines.Trouble trouble) {
        StringBuilder said = new StringBuilder(escaped(trouble.sentence()));
        for (int at = 0; at < Math.min(3, trouble.offers().size()); at++) {
            said.append(at == 0 ? "  Take " : " · ");
            said.append("<a href=\"").append(at).append("\">");
            said.append(escaped(trouble.offers().get(at)))
                    .append("</a> (Alt+")
                    .append(at + 1)
                    .append(')');
        }
        if (!trouble.add().isEmpty()) {
            said.append("  <a href=\"add\">").append(escaped(trouble.add())).append("</a> (Ctrl+Enter)");
        }
        return said.toString();
    }

    private static String escaped(String words) {
        return words.replace("->", "\u2192")
                .replace("&", "&&")
                .replace('<', '\u2039')
                .replace('>', '\u203a');
    }

    private void follow(String link) {
        if (link.equals("add")) {
            owner.acts().add(row());
        } else {
            offered(Integer.parseInt(link));
        }
    }

    private boolean offered(int at) {
        List<String> offers = shown.trouble().map(EntryLines.Trouble::offers).orElseGet(List::of);
        if (at >= offers.size()) {
            return false;
        }
        int row = row();
        owner.acts().save(owner.subject(), row, offers.get(at));
        owner.focusRow(row);
        return true;
    }

    private void enter() {
        int row = row();
        boolean blank = text.getText().isBlank();
        if (!isEdited() || leave()) {
            owner.focusRow(blank ? row : row + 1);
        } else {
            selectUnknown();
        }
    }

    private void selectUnknown() {
        Optional<EntryLines.Trouble> trouble = shown.trouble().filter(known -> known.to() > known.from());
        trouble.ifPresent(known -> text.setSelection(known.from(), known.to()));
    }

    /** Saves what was typed; answers whether it was understood or nothing was typed. */
    boolean leave() {
        if (text.isDisposed() || !isEdited()) {
            return true;
        }
        String typed = text.getText();
        int row = row();
        shown = new EntryLines.Line(typed, shown.mark(), shown.figures(), shown.trouble());
        return owner.acts().save(owner.subject(), row, typed.strip());
    }

    /** Makes what is typed count as shown. */
    void forget() {
        shown = new EntryLines.Line(text.getText(), shown.mark(), shown.figures(), Optional.empty());
    }

    private boolean isEdited() {
        return !text.getText().strip().equals(shown.text().strip());
    }

    private void leaveLater() {
        owner.getDisplay().asyncExec(() -> {
            if (!text.isDisposed() && !text.isFocusControl() && !proposals.isProposalPopupOpen()) {
                leave();
            }
        });
    }

    /** Several lines at once are not for this field alone. */
    private void pasted(Event event) {
        String coming = event.text.strip();
        if (coming.indexOf('\n') >= 0 || coming.indexOf('\r') >= 0) {
            event.doit = false;
            owner.getDisplay().asyncExec(() -> {
                if (!text.isDisposed()) {
                    owner.acts().paste(row(), coming);
                }
            });
        }
    }

    /**
     * Enter takes what was typed, not the first offer, unless somebody went down the list; Tab takes the first offer and
     * stays in the line.
     */
    private void traverse(Event event) {
        boolean next = event.detail == SWT.TRAVERSE_TAB_NEXT;
        boolean leaves = next || event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
        boolean enter = event.detail == SWT.TRAVERSE_RETURN && !walked;
        if (!proposals.isProposalPopupOpen() || !leaves && !enter) {
            return;
        }
        List<String> offers = next && !walked ? owner.acts().complete(text.getText()) : List.of();
        proposals.closeProposalPopup();
        if (!offers.isEmpty()) {
            text.setText(offers.get(0));
            text.setSelection(text.getCharCount());
            event.doit = false;
        }
    }

    private void key(Event event) {
        walked = proposals.isProposalPopupOpen() && (walked || arrow(event) != 0);
        boolean alt = (event.stateMask & SWT.MODIFIER_MASK) == SWT.ALT;
        boolean plain = (event.stateMask & SWT.MODIFIER_MASK) == 0;
        boolean enter = event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR;
        boolean done = false;
        if (alt && event.keyCode >= '1' && event.keyCode <= '3') {
            done = offered(event.keyCode - '1');
        } else if (alt && arrow(event) != 0) {
            done = move(arrow(event));
        } else if (plain && arrow(event) != 0 && !proposals.isProposalPopupOpen()) {
            done = owner.focusRow(row() + arrow(event));
        } else if (enter && (event.stateMask & SWT.MODIFIER_MASK) != 0) {
            done = enterWith(event.stateMask & SWT.MODIFIER_MASK);
        } else if (event.keyCode == SWT.F7) {
            leave();
            owner.acts().mark(row());
            done = true;
        } else if (event.character == SWT.ESC && isEdited() && !proposals.isProposalPopupOpen()) {
            text.setText(shown.text());
            done = true;
        }
        event.doit &= !done;
    }

    private static int arrow(Event event) {
        return event.keyCode == SWT.ARROW_DOWN ? 1 : event.keyCode == SWT.ARROW_UP ? -1 : 0;
    }

    private boolean move(int by) {
        int row = row();
        leave();
        return owner.acts().move(row, by) && owner.focusRow(row + by);
    }

    private boolean enterWith(int modifier) {
        int row = row();
        if (modifier == SWT.MOD1) {
            leave();
            owner.acts().add(row);
        } else if (modifier == SWT.SHIFT && !text.getText().isBlank()) {
            leave();
            owner.acts().open(row + 1);
            owner.focusRow(row + 1);
        }
        return true;
    }

    boolean focus() {
        return !text.isDisposed() && text.setFocus();
    }

    boolean isFocused() {
        return !text.isDisposed() && text.isFocusControl();
    }

    void dispose() {
        proposals.setEnabled(false);
        List.<Control>of(text, mark, remove, wave, sentence).forEach(Control::dispose);
        figures.forEach(Control::dispose);
    }
}
