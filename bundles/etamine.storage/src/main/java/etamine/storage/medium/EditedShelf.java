package etamine.storage.medium;

import etamine.storage.Document;
import etamine.storage.Shelf;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A shelf as a medium has it with edits laid over it.
 *
 * @param medium the medium
 * @param name the shelf's name
 * @param edits what is laid over it; none for the shelf as committed
 */
record EditedShelf(Medium medium, String name, Edits edits) implements Shelf {

    @Override
    public Optional<Document> get(String id) {
        return edits.get(name, id)
                .map(Edits.Edit::now)
                .or(() -> medium.latest(name, id))
                .filter(document -> !document.removed());
    }

    @Override
    public List<Document> all() {
        return edits.over(name, medium.present(name));
    }

    @Override
    public List<String> ids() {
        return edits.touches(name) ? Shelf.super.ids() : medium.presentIds(name);
    }

    @Override
    public List<Document> history(String id) {
        return medium.revisions(name, id);
    }

    @Override
    public List<Document> asOf(Instant at) {
        return medium.asOf(name, at);
    }

    @Override
    public List<Document> firsts() {
        return medium.firsts(name);
    }
}
