package etamine.recipes.ui.internal;

import etamine.kitchen.recipe.Recipe;
import etamine.recipes.Change;
import etamine.recipes.RecipePhotos;
import etamine.recipes.RecipePhotos.Photo;
import etamine.recipes.ui.internal.PhotoModel.View;
import etamine.widgets.FilePick;
import etamine.widgets.FormPane;
import etamine.widgets.Palette;
import etamine.widgets.SavedField;
import etamine.widgets.Spoken;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;

/** The photo of a recipe: one quiet line while there is none, else the photo with what is said of it beside it. */
final class PhotoSection {
    private static final int WIDEST = 230;
    private static final int TALLEST = 130;
    private static final List<FilePick.Kind> READ =
            List.of(new FilePick.Kind("Pictures", "jpg;*.jpeg;*.png;*.gif;*.bmp"));
    private static final List<FilePick.Kind> WRITTEN = List.of(new FilePick.Kind("JPEG", "jpg"));

    private final FormPane form;
    private final Desk desk;
    private final PhotoModel model;
    private final Composite pane;
    private final PhotoCanvas canvas;
    private final Composite side;
    private final Text text;
    private final SavedField said;
    private final Label remark;
    private final Link links;
    private final Runnable pasting;
    private Optional<Recipe> shown = Optional.empty();
    private String pictured = "";

    PhotoSection(FormPane form, Desk desk) {
        this.form = form;
        this.desk = desk;
        this.model = new PhotoModel(desk.ware().insight().photos());
        pane = form.wide(PhotoSection::pane);
        canvas = Spoken.id(new PhotoCanvas(pane, WIDEST, TALLEST), "photo");
        canvas.onOpen(this::larger);
        side = new Composite(pane, SWT.NONE);
        side.setLayout(plain(1));
        side.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        Label caption = new Label(side, SWT.NONE);
        caption.setText("What is seen on the photo");
        caption.setForeground(Palette.of(form).quiet());
        text = Spoken.id(new Text(side, SWT.BORDER | SWT.SINGLE), "field:photo-text");
        text.setTextLimit(RecipePhotos.LONGEST_TEXT);
        text.setMessage("for those who do not see it, such as: jus on the right, purée under the breast");
        text.setLayoutData(narrow());
        Spoken.label(text, caption);
        said = new SavedField(form, text, this::describe);
        remark = new Label(side, SWT.WRAP);
        remark.setForeground(Palette.of(form).quiet());
        remark.setLayoutData(narrow());
        links = Spoken.id(new Link(side, SWT.WRAP), "photo:links");
        links.setLayoutData(narrow());
        links.addListener(SWT.Selection, event -> follow(event.text));
        links.setToolTipText(RecipePhotos.TAKEN + ". " + RecipePhotos.KEPT);
        PhotoIntake intake = new PhotoIntake(desk.frame(), this::attach, this::attachFile);
        intake.dropOn(pane);
        List.of(canvas, links).forEach(intake::pasteOn);
        pasting = intake::paste;
    }

    /** Takes the room there is and asks for none. */
    private static GridData narrow() {
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.widthHint = 120;
        return data;
    }

    private static Composite pane(Composite cell) {
        Composite pane = new Composite(cell, SWT.NONE);
        pane.setLayout(plain(2));
        return pane;
    }

    private static GridLayout plain(int columns) {
        GridLayout layout = new GridLayout(columns, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 12;
        return layout;
    }

    void show(Recipe recipe) {
        boolean other = shown.filter(was -> was.id().equals(recipe.id())).isEmpty();
        shown = Optional.of(recipe);
        pane.getParent().setVisible(model.isThere());
        if (other || recipe.photo().isEmpty()) {
            arrange(model.empty(recipe), Optional.empty());
        }
        if (recipe.photo().isPresent() && model.isThere()) {
            int edge = canvas.edge();
            desk.frame().work("Reading the photo of " + recipe.name(), progress -> read(recipe, edge), this::arrive);
        }
    }

    /** A photo with its pixels unpacked. */
    private record Read(View view, Optional<ImageData> pixels) {}

    private Read read(Recipe recipe, int edge) {
        View view = model.read(recipe, edge);
        return new Read(view, view.photo().map(PhotoCanvas::unpacked));
    }

    private void arrive(Read read) {
        boolean still =
                shown.filter(recipe -> recipe.id().equals(read.view().recipe())).isPresent();
        if (still && !pane.isDisposed()) {
            form.update(() -> arrange(read.view(), read.pixels()));
        }
    }

    private void arrange(View view, Optional<ImageData> pixels) {
        boolean has = pixels.isPresent();
        String name = shown.map(Recipe::name).orElse("");
        String id = view.photo().map(Photo::id).orElse("");
        if (!id.equals(pictured) || !canvas.spoken().equals(view.spoken(name))) {
            canvas.show(pixels, view.spoken(name));
            pictured = id;
        }
        for (Control each : List.of(canvas, text, side.getChildren()[0])) {
            each.setVisible(has);
            exclude(each, !has);
        }
        said.show(view.recipe(), view.photo().map(Photo::text).orElse(""));
        remark.setText(view.remark());
        remark.setVisible(!view.remark().isEmpty());
        exclude(remark, view.remark().isEmpty());
        links.setText(view.links());
        form.reflow();
    }

    private static void exclude(Control control, boolean exclude) {
        GridData data = control.getLayoutData() instanceof GridData present ? present : new GridData();
        data.exclude = exclude;
        control.setLayoutData(data);
    }

    private void follow(String link) {
        switch (link) {
            case PhotoModel.ADD ->
                FilePick.open(desk.frame().window(), "Choose a photo", READ).ifPresent(this::attachFile);
            case PhotoModel.PASTE -> pasting.run();
            case PhotoModel.LARGER -> larger();
            case PhotoModel.SAVE -> save();
            default -> shown.ifPresent(recipe -> change("Removing the photo", () -> model.remove(recipe.id())));
        }
    }

    private void attachFile(Path file) {
        shown.ifPresent(recipe -> change("Taking in the photo", () -> model.attach(recipe.id(), file)));
    }

    private void attach(byte[] file) {
        shown.ifPresent(recipe -> change("Taking in the photo", () -> model.attach(recipe.id(), file)));
    }

    private Optional<String> describe(String recipe, String typed) {
        change("Saving", () -> model.describe(recipe, typed));
        return Optional.empty();
    }

    private void change(String label, Supplier<Change> change) {
        desk.work(label, change);
    }

    private void save() {
        shown.ifPresent(recipe -> FilePick.save(
                        desk.frame().window(), "Save a copy of the photo", recipe.name(), WRITTEN)
                .ifPresent(file -> desk.frame()
                        .work(
                                "Saving the photo",
                                progress -> model.save(recipe.id(), file),
                                saved -> desk.frame().say("The photo was written to " + saved + "."))));
    }

    private void larger() {
        shown.ifPresent(recipe -> new PhotoWindow(desk.frame(), model).open(recipe));
    }
}
