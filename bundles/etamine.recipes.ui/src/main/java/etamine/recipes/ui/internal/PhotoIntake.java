package etamine.recipes.ui.internal;

import etamine.shell.Frame;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.Control;

/** Ways a picture comes in without a dialog: dropped as a file, pasted as a picture or as a file. */
final class PhotoIntake {
    private final Frame frame;
    private final Consumer<byte[]> picture;
    private final Consumer<Path> file;

    PhotoIntake(Frame frame, Consumer<byte[]> picture, Consumer<Path> file) {
        this.frame = frame;
        this.picture = picture;
        this.file = file;
    }

    void dropOn(Control control) {
        DropTarget target = new DropTarget(control, DND.DROP_COPY | DND.DROP_MOVE | DND.DROP_DEFAULT);
        target.setTransfer(new Transfer[] {FileTransfer.getInstance()});
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragEnter(DropTargetEvent event) {
                event.detail = DND.DROP_COPY;
            }

            @Override
            public void dragOperationChanged(DropTargetEvent event) {
                event.detail = DND.DROP_COPY;
            }

            @Override
            public void drop(DropTargetEvent event) {
                dropped(event.data);
            }
        });
        control.addListener(SWT.Dispose, event -> target.dispose());
    }

    /** Takes the first of the files that were dropped. */
    void dropped(Object data) {
        if (data instanceof String[] files && files.length > 0) {
            file.accept(Path.of(files[0]));
        } else {
            frame.warn("Only the file of a picture can be dropped here; save it first, or copy and paste it.");
        }
    }

    void pasteOn(Control control) {
        control.addListener(SWT.KeyDown, event -> {
            if (event.stateMask == SWT.MOD1 && event.keyCode == 'v') {
                paste();
            }
        });
    }

    void paste() {
        Clipboard clipboard = new Clipboard(frame.window().getDisplay());
        try {
            Object files = clipboard.getContents(FileTransfer.getInstance());
            Object pixels = clipboard.getContents(ImageTransfer.getInstance());
            if (files instanceof String[] names && names.length > 0) {
                file.accept(Path.of(names[0]));
            } else if (pixels instanceof ImageData data) {
                pasted(data);
            } else {
                frame.warn("There is no picture to paste; copy one first, or choose its file.");
            }
        } finally {
            clipboard.dispose();
        }
    }

    /** Packed beside the window, since a large picture takes a while. */
    void pasted(ImageData data) {
        frame.work("Reading what was pasted", progress -> packed(data), bytes -> bytes.ifPresent(picture));
    }

    private static Optional<byte[]> packed(ImageData data) {
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {data};
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        loader.save(bytes, SWT.IMAGE_PNG);
        return Optional.of(bytes.toByteArray());
    }
}
