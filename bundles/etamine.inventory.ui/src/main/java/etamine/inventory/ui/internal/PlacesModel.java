package etamine.inventory.ui.internal;

import etamine.inventory.RefusedException;
import etamine.kitchen.stock.Place;
import etamine.storage.BookException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The places as lines to edit, without widgets. */
final class PlacesModel {
    private final StockModel stock;
    private final List<Place> shown = new ArrayList<>();

    PlacesModel(StockModel stock) {
        this.stock = stock;
    }

    /** The lines as they are now: name and place in the walk. */
    List<List<String>> rows() {
        shown.clear();
        shown.addAll(stock.places());
        return shown.stream()
                .map(place -> List.of(place.name(), String.valueOf(place.order())))
                .toList();
    }

    /** Saves a line; one past the last adds a place, an emptied one removes it. Answers what is wrong, if anything. */
    Optional<String> save(int row, String name, String walk) {
        if (!walk.isEmpty() && !walk.matches("[0-9]{1,6}")) {
            return Optional.of("Write the place in the walk as a whole number, such as 1.");
        }
        try {
            if (name.isEmpty()) {
                remove(row);
            } else {
                put(row, name, walk);
            }
            return Optional.empty();
        } catch (RefusedException | BookException refused) {
            return Optional.of(String.valueOf(refused.getMessage()));
        }
    }

    private void remove(int row) {
        if (row < shown.size()) {
            stock.room().removePlace(shown.get(row).id());
            shown.remove(row);
        }
    }

    private void put(int row, String name, String walk) {
        int last = shown.stream().mapToInt(Place::order).max().orElse(0);
        int order = walk.isEmpty() ? last + 1 : Integer.parseInt(walk);
        String id = row < shown.size() ? shown.get(row).id() : freshId(name);
        Place place = new Place(id, name, order);
        stock.room().savePlace(place);
        if (row < shown.size()) {
            shown.set(row, place);
        } else {
            shown.add(place);
        }
    }

    private String freshId(String name) {
        String plain = Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        String base = plain.isEmpty() ? "place" : plain;
        String id = base;
        for (int number = 2; taken(id); number++) {
            id = base + "-" + number;
        }
        return id;
    }

    private boolean taken(String id) {
        return stock.places().stream().anyMatch(place -> place.id().equals(id));
    }
}
