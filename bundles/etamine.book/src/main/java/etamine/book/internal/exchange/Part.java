package etamine.book.internal.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.NullNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * One section as all files together give it. Elements that turn out bad are taken out one by one and leave a null in
 * their place, so that the others keep their pointers.
 */
final class Part {
    private final String name;
    private final Path first;
    private final JsonNode original;
    private final JsonNode working;
    private boolean gone;
    private final List<Place> places = new ArrayList<>();

    /**
     * Where an element comes from.
     *
     * @param file the file
     * @param index its index in that file's section
     */
    private record Place(Path file, int index) {}

    Part(String name, Path file, JsonNode value) {
        this.name = name;
        this.first = file;
        this.original = value.isArray() ? ((ArrayNode) value).arrayNode() : value;
        this.working = value.isArray() ? ((ArrayNode) value).arrayNode() : value;
        if (value.isArray()) {
            append(file, value);
        }
    }

    /** Adds the elements of another file; false if one of the two is no array, so that they cannot be joined. */
    boolean append(Path file, JsonNode value) {
        if (!(original instanceof ArrayNode all) || !value.isArray()) {
            return false;
        }
        for (int i = 0; i < value.size(); i++) {
            all.add(value.get(i));
            ((ArrayNode) working).add(value.get(i));
            places.add(new Place(file, i));
        }
        return true;
    }

    String name() {
        return name;
    }

    /** Whether it is an array of entries. */
    boolean isList() {
        return original.isArray();
    }

    /** Whether all of it was taken out. */
    boolean gone() {
        return gone;
    }

    /** The value without what was taken out. */
    JsonNode working() {
        return working;
    }

    /** How many elements the files give; anything but an array counts as one. */
    int total() {
        return original.isArray() ? original.size() : 1;
    }

    /** Takes out the element a pointer within the section leads to, or all of it. */
    void takeOut(String pointer) {
        int index = Pointers.index(pointer);
        if (working instanceof ArrayNode array && index >= 0 && index < array.size()) {
            array.set(index, NullNode.getInstance());
        } else {
            gone = true;
        }
    }

    /** What the pointer leads to in the files: an element, or the whole section. */
    JsonNode entry(String pointer) {
        int index = Pointers.index(pointer);
        return original.isArray() && index >= 0 && index < original.size() ? original.get(index) : original;
    }

    /** The file a pointer within the section leads to, with the pointer as it is in that file. */
    Fault fault(String pointer, String problem) {
        int index = Pointers.index(pointer);
        String top = Pointers.member("", name);
        if (!original.isArray() || index < 0 || index >= places.size()) {
            return new Fault(this, pointer, first, top + pointer, problem);
        }
        Place place = places.get(index);
        String inFile = top + '/' + place.index() + Pointers.withinElement(pointer);
        return new Fault(this, pointer, place.file(), inFile, problem);
    }
}
