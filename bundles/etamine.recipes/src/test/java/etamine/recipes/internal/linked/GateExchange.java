package etamine.recipes.internal.linked;

import com.fasterxml.jackson.databind.JsonNode;
import etamine.base.Progress;
import etamine.kitchen.exchange.Exchange;
import etamine.kitchen.exchange.ExchangeEntry;
import etamine.kitchen.exchange.LoadResult;
import etamine.kitchen.exchange.LoadResult.Rejected;
import etamine.kitchen.item.Item;
import etamine.recipes.internal.Range;
import etamine.recipes.internal.photo.GivenPhotos;
import etamine.recipes.internal.photo.PhotoSection;
import etamine.testing.SetFacts;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The gate of the exchange form before the recipes of a range: all entries are good, or nothing is written. */
final class GateExchange implements Exchange {
    private final Range range;
    private final PhotoSection photos;
    final List<String> loaded = new ArrayList<>();

    GateExchange(Range range) {
        this(range, new GivenPhotos(range).section);
    }

    GateExchange(Range range, PhotoSection photos) {
        this.range = range;
        this.photos = photos;
    }

    @Override
    public LoadResult load(String name, String form, Progress progress) {
        JsonNode file = Range.json(form);
        file.path("ingredients")
                .forEach(item -> range.item(
                        item.path("id").asText(), item.path("countIn").asText()));
        SetFacts facts = new SetFacts();
        range.known().orElseThrow().listed().forEach((id, item) -> facts.put(Item.class, id, item));
        range.section.recall(facts);
        List<ExchangeEntry> entries = range.section.read(file.path("recipes"), facts);
        List<ExchangeEntry> pictures = photos.read(file.path("photos"), facts);
        List<Rejected> rejected = new ArrayList<>();
        for (ExchangeEntry entry : entries) {
            List<ExchangeEntry.Trouble> troubles = new ArrayList<>(entry.troubles());
            troubles.addAll(entry.check(facts));
            troubles.forEach(trouble -> rejected.add(
                    new Rejected(Path.of(name), "/recipes" + entry.pointer() + trouble.pointer(), trouble.problem())));
        }
        if (rejected.isEmpty()) {
            loaded.add(form);
            range.book.write("Load " + name, transaction -> {
                entries.forEach(entry -> entry.write(transaction));
                pictures.forEach(entry -> entry.write(transaction));
                return entries.size();
            });
        }
        return new LoadResult(
                rejected.isEmpty(), Map.of("recipes", entries.size()), Map.of(), rejected, List.of(), List.of());
    }

    @Override
    public LoadResult load(List<Path> files, LoadTerms terms, Progress progress) {
        throw new AssertionError("What is taken over is in memory.");
    }

    @Override
    public Map<String, Integer> dump(Path file, Progress progress) {
        throw new AssertionError("Recipes are written one by one.");
    }
}
