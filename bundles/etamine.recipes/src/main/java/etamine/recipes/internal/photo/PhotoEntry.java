package etamine.recipes.internal.photo;

import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.documents.Picture;
import etamine.kitchen.exchange.EntryJson;
import etamine.recipes.RecipePhotos.Photo;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A photo's document: its entry in the exchange form. Its id is made from its pixels, so that the same picture is kept
 * once however many recipes show it.
 */
public final class PhotoEntry {
    static final String TYPE = "image/jpeg";
    private static final int HASH_LENGTH = 20;

    private PhotoEntry() {}

    /** The id of a picture. */
    public static String id(Picture picture) {
        try {
            byte[] hash =
                    MessageDigest.getInstance("SHA-256").digest(picture.base64().getBytes(StandardCharsets.US_ASCII));
            return "photo-" + HexFormat.of().formatHex(hash).substring(0, HASH_LENGTH);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256.", e);
        }
    }

    /** A new entry. */
    public static ObjectNode of(Picture picture, String text) {
        ObjectNode entry = EntryJson.empty()
                .put("id", id(picture))
                .put("type", TYPE)
                .put("data", picture.base64())
                .put("width", picture.width())
                .put("height", picture.height());
        return text.isEmpty() ? entry : entry.put("text", text);
    }

    /** An entry with another text, keeping every member this program does not know. */
    static String described(String json, String text) {
        ObjectNode entry = EntryJson.read(json);
        if (text.isEmpty()) {
            entry.remove("text");
        } else {
            entry.put("text", text);
        }
        return entry.toString();
    }

    static String text(String json) {
        return EntryJson.read(json).path("text").asText("");
    }

    /** The picture of an entry, by the size it was found to have. */
    static Photo photo(String id, String json, Picture picture) {
        return new Photo(id, text(json), picture.base64(), picture.width(), picture.height());
    }
}
