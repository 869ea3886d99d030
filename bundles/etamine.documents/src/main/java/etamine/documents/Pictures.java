package etamine.documents;

import org.osgi.annotation.versioning.ProviderType;

/**
 * Takes pictures in from cameras and other programs and makes them small. Nothing of a file but what can be seen is
 * kept: neither the place where it was taken nor the camera nor any text in it. Each call may take a second or two, so
 * none belongs on the window's thread. Thread-safe.
 */
@ProviderType
public interface Pictures {

    /** The most bytes of a file that is taken in: 25 MB. */
    int LARGEST_FILE = 25 * 1024 * 1024;

    /** The most pixels of a picture that is taken in; judged from its head, before anything is unpacked. */
    int MOST_PIXELS = 60_000_000;

    /** The longer edge of what comes out, in pixels, where there was as much. */
    int LONGEST_EDGE = 1280;

    /** The most bytes of what comes out. */
    int LARGEST_KEPT = 250_000;

    /**
     * Takes in a JPEG, PNG, GIF (its first picture) or BMP, told by its content and not by its name. It is turned
     * upright by its Exif orientation, laid on white where it is transparent, brought into sRGB, made smaller and written
     * as JPEG.
     */
    Taken take(byte[] file);

    /** Looks at a picture in the form it is kept in, without unpacking it; the size is read from it. */
    Taken look(String base64);

    /** The same picture with a longer edge of at most so many pixels; refused when it is damaged. */
    Taken within(Picture picture, int edge);

    /** A picture, or why there is none. */
    sealed interface Taken {

        /**
         * It is there.
         *
         * @param picture the picture
         */
        record Ready(Picture picture) implements Taken {}

        /**
         * It was not taken.
         *
         * @param text a sentence that says what to do
         */
        record Refused(String text) implements Taken {}
    }
}
