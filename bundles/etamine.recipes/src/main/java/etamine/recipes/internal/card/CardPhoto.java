package etamine.recipes.internal.card;

import etamine.documents.Block;
import etamine.documents.Picture;
import etamine.recipes.RecipePhotos.Photo;

/** A photo as it stands on a card: large enough to plate by, small enough to leave the lines their page. */
final class CardPhoto {
    private static final int TALLEST = 150;

    private CardPhoto() {}

    static Block of(String recipe, Photo photo) {
        String text = photo.text().isEmpty() ? "Photo of " + recipe : photo.text();
        return new Block.Photo(new Picture(photo.base64(), photo.width(), photo.height()), text, TALLEST);
    }
}
