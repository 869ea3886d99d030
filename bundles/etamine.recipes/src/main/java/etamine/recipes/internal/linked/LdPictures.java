package etamine.recipes.internal.linked;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.documents.Pictures;
import etamine.documents.Pictures.Taken;
import etamine.kitchen.exchange.EntryJson;
import etamine.recipes.FoundRecipes.Found;
import etamine.recipes.RecipePhotos.Photo;
import etamine.recipes.internal.photo.PhotoEntry;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Pictures that stand in a file of recipes themselves, as data URIs (RFC 2397). What only has an address is never
 * fetched.
 */
final class LdPictures {
    private static final String DATA = "data:";
    private static final String WRITTEN = "data:image/jpeg;base64,";

    private final Optional<Pictures> pictures;

    /** With what takes pictures in, while it is there. */
    LdPictures(Optional<Pictures> pictures) {
        this.pictures = pictures;
    }

    /** The image of a recipe as the standard has it; what is seen on it stands beside it as its caption. */
    static JsonNode written(Photo photo) {
        ObjectNode image = EntryJson.empty().put("@type", "ImageObject").put("encodingFormat", "image/jpeg");
        image.put("contentUrl", WRITTEN + photo.base64());
        return photo.text().isEmpty() ? image : image.put("caption", photo.text());
    }

    /** What was found, with the first picture that stands in the file. */
    Found pictured(Found found, JsonNode image) {
        List<String> remarks = new ArrayList<>(found.remarks());
        for (JsonNode each : LdWords.many(image)) {
            String address = address(each);
            if (isData(address)) {
                Taken taken = take(
                        address, EntryJson.read(found.entry()).path("photo").asText(""));
                if (taken instanceof Taken.Ready ready) {
                    String caption = LdWords.text(each.path("caption"));
                    return with(found, PhotoEntry.of(ready.picture(), caption));
                }
                remarks.add("Its picture is left out: " + ((Taken.Refused) taken).text());
            } else {
                remarks.add("Its picture “" + LdWords.shown(address)
                        + "” is not in the file and is never fetched; save it and add it to the recipe as a file.");
            }
        }
        return found.withRemarks(remarks);
    }

    private static String address(JsonNode image) {
        return image.isTextual()
                ? image.asText().strip()
                : image.path("contentUrl").asText(image.path("url").asText("")).strip();
    }

    private static boolean isData(String address) {
        return address.regionMatches(true, 0, DATA, 0, DATA.length());
    }

    /** A picture this program wrote is taken as it is, so that it stays the same; any other is taken in. */
    private Taken take(String address, String named) {
        int comma = address.indexOf(',');
        boolean coded = comma > 0
                && address.substring(0, comma).toLowerCase(Locale.ROOT).endsWith(";base64");
        if (!coded || pictures.isEmpty()) {
            return new Taken.Refused("its data are not base64; save it and add it to the recipe as a file.");
        }
        String base64 = address.substring(comma + 1);
        Taken asIs = pictures.get().look(base64);
        if (asIs instanceof Taken.Ready ready && PhotoEntry.id(ready.picture()).equals(named)) {
            return asIs;
        }
        try {
            return pictures.get().take(Base64.getDecoder().decode(base64.replaceAll("\\s+", "")));
        } catch (IllegalArgumentException noBase64) {
            return new Taken.Refused("its data are not base64; save it and add it to the recipe as a file.");
        }
    }

    private static Found with(Found found, ObjectNode photo) {
        String id = photo.path("id").asText();
        ObjectNode entry = EntryJson.read(found.entry()).put("photo", id);
        return found.pictured(found.recipe().withPhoto(Optional.of(id)), entry.toString(), photo.toString());
    }
}
