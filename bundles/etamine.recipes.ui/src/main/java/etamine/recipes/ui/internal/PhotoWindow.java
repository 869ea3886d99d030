package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.recipes.ui.internal.PhotoModel.View;
import etamine.shell.Frame;
import etamine.widgets.Spoken;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Shell;

/** A photo as large as the screen allows, in a window of its own; Escape, Enter or a click closes it. */
final class PhotoWindow {
    private static final int PERCENT = 85;

    private final Frame frame;
    private final PhotoModel model;

    PhotoWindow(Frame frame, PhotoModel model) {
        this.frame = frame;
        this.model = model;
    }

    void open(Recipe recipe) {
        Rectangle screen = frame.window().getMonitor().getClientArea();
        int edge = Math.max(screen.width, screen.height)
                * frame.window().getMonitor().getZoom()
                / 100;
        frame.work(
                "Reading the photo of " + recipe.name(),
                progress -> {
                    View view = model.read(recipe, edge);
                    return new Unpacked(view, view.photo().map(PhotoCanvas::unpacked));
                },
                read -> read.pixels().ifPresent(pixels -> show(recipe, read.view(), pixels)));
    }

    private record Unpacked(View view, Optional<ImageData> pixels) {}

    private void show(Recipe recipe, View view, ImageData pixels) {
        Rectangle screen = frame.window().getMonitor().getClientArea();
        Shell shell = new Shell(frame.window(), SWT.DIALOG_TRIM | SWT.RESIZE);
        shell.setText(recipe.name());
        shell.setLayout(new FillLayout());
        PhotoCanvas canvas = Spoken.id(
                new PhotoCanvas(shell, screen.width * PERCENT / 100, screen.height * PERCENT / 100), "photo:large");
        canvas.show(Optional.of(pixels), view.spoken(recipe.name()));
        canvas.onOpen(shell::close);
        shell.pack();
        Rectangle window = frame.window().getBounds();
        shell.setLocation(
                Math.max(screen.x, window.x + (window.width - shell.getSize().x) / 2),
                Math.max(screen.y, window.y + (window.height - shell.getSize().y) / 2));
        shell.open();
        canvas.setFocus();
    }
}
