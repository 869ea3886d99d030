package etamine.recipes.internal.photo;

import etamine.documents.Pictures;
import etamine.documents.internal.CameraPictures;
import etamine.recipes.internal.Range;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Photos on a book in memory, and files of pictures to give them. */
public final class GivenPhotos {
    public final Pictures pictures = new CameraPictures();
    public final BookPhotos photos;
    public final PhotoSection section;
    public final PhotoCheck check;

    /** The photos of the recipes on that range. */
    public GivenPhotos(Range range) {
        photos = new BookPhotos(range.book, range.recipes, range.writing, range.writing, pictures);
        section = new PhotoSection(range.book, pictures);
        check = new PhotoCheck(range.book, range.recipes);
    }

    /** A PNG of one colour. */
    public static byte[] file(Color colour) {
        BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(colour);
        graphics.fillRect(0, 0, 60, 40);
        graphics.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
