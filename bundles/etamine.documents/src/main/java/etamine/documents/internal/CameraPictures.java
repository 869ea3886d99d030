package etamine.documents.internal;

import etamine.documents.Picture;
import etamine.documents.Pictures;
import java.io.IOException;
import java.util.Base64;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;

/** Pictures read and written by the platform's own readers, one pixel in so many where there are very many. */
@Component
public final class CameraPictures implements Pictures {
    private static final String OTHER = "This is no picture in JPEG, PNG, GIF or BMP form, whatever its name ends in;"
            + " save it as JPEG and add that.";
    private static final String DAMAGED =
            "This picture is damaged and cannot be read; open it in another program, save it as JPEG and add that.";
    private static final String CUT_SHORT =
            "This picture ends too early, as when copying was broken off;" + " fetch it again from where it came from.";

    @Override
    public Taken take(byte[] file) {
        if (file.length == 0) {
            return new Taken.Refused("This file is empty; choose the picture itself.");
        }
        if (file.length > LARGEST_FILE) {
            return new Taken.Refused("This file has more than " + LARGEST_FILE / (1024 * 1024)
                    + " MB; save the picture smaller or as JPEG and add that.");
        }
        Optional<PictureForm> form = PictureForm.of(file);
        if (form.isEmpty()) {
            return new Taken.Refused(OTHER);
        }
        return form.get().isRead()
                ? unpacked(file, form.get(), LONGEST_EDGE)
                : new Taken.Refused("This is a " + form.get() + " file, which is not read here;"
                        + " open it in another program, save it as JPEG and add that.");
    }

    private static Taken unpacked(byte[] file, PictureForm form, int edge) {
        try (Unpacking unpacking = new Unpacking(file, form)) {
            if (tooLarge(unpacking)) {
                return tooMany(unpacking);
            }
            Pixels read = unpacking.pixels(edge);
            return unpacking.cutShort()
                    ? new Taken.Refused(CUT_SHORT)
                    : new Taken.Ready(SmallJpeg.of(read.within(edge), LARGEST_KEPT));
        } catch (IOException | RuntimeException damaged) {
            // the platform's readers answer a hostile file with any exception there is
            return new Taken.Refused(DAMAGED);
        }
    }

    private static boolean tooLarge(Unpacking unpacking) throws IOException {
        return (long) unpacking.width() * unpacking.height() > MOST_PIXELS;
    }

    private static Taken tooMany(Unpacking unpacking) throws IOException {
        return new Taken.Refused("This picture has " + unpacking.width() + " x " + unpacking.height()
                + " pixels, more than " + MOST_PIXELS / 1_000_000 + " million; save it smaller and add that.");
    }

    @Override
    public Taken look(String base64) {
        try {
            byte[] file = Base64.getDecoder().decode(base64);
            if (PictureForm.of(file).filter(form -> form == PictureForm.JPEG).isEmpty()) {
                return new Taken.Refused("This is no JPEG; write the whole JPEG file in base64.");
            }
            try (Unpacking unpacking = new Unpacking(file, PictureForm.JPEG)) {
                return tooLarge(unpacking)
                        ? tooMany(unpacking)
                        : new Taken.Ready(new Picture(base64, unpacking.width(), unpacking.height()));
            }
        } catch (IllegalArgumentException noBase64) {
            return new Taken.Refused("This is not base64; write the whole JPEG file in base64, without line breaks.");
        } catch (IOException | RuntimeException damaged) {
            return new Taken.Refused(DAMAGED);
        }
    }

    @Override
    public Taken within(Picture picture, int edge) {
        return Math.max(picture.width(), picture.height()) <= edge
                ? new Taken.Ready(picture)
                : unpacked(picture.bytes(), PictureForm.JPEG, edge);
    }
}
