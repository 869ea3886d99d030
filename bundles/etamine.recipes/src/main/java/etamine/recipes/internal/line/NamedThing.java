package etamine.recipes.internal.line;

import etamine.kitchen.item.Item;
import etamine.recipes.UseLines.Part;
import etamine.recipes.UseLines.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the words beside an amount name.
 *
 * @param item the item
 * @param as how it is prepared, as the item has it where it has it
 * @param substitutes what may stand in for it
 * @param spans where each stands in the line
 */
record NamedThing(Item item, Optional<String> as, List<Item> substitutes, List<Span> spans) {

    /** An item and, behind a comma, a preparation. */
    static NamedThing of(Item item, Cut name, Optional<String> as, Cut prepared) {
        List<Span> spans = new ArrayList<>(List.of(new Span(Part.ITEM, name.from(), name.to())));
        as.ifPresent(text -> spans.add(new Span(Part.PREPARATION, prepared.from(), prepared.to())));
        return new NamedThing(item, as, List.of(), spans);
    }

    /** Whether the item has the preparation, where one is named. */
    boolean isKnown() {
        return as.isEmpty() || item.preparation(as.get()).isPresent();
    }

    NamedThing orElse(Item substitute, Cut name) {
        List<Item> more = new ArrayList<>(substitutes);
        more.add(substitute);
        return with(more, new Span(Part.SUBSTITUTE, name.from(), name.to()));
    }

    NamedThing with(Span span) {
        return with(substitutes, span);
    }

    private NamedThing with(List<Item> others, Span span) {
        List<Span> all = new ArrayList<>(spans);
        all.add(span);
        return new NamedThing(item, as, others, all);
    }
}
