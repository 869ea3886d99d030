package etamine.recipes.ui.internal;

import etamine.documents.internal.CameraPictures;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemStarter;
import etamine.kitchen.item.Items;
import etamine.kitchen.item.Preparation;
import etamine.measures.Equivalence;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.RecipePhotos;
import etamine.recipes.RecipeSearch;
import etamine.recipes.Revisions;
import etamine.recipes.Trials;
import etamine.recipes.UseLines;
import etamine.recipes.internal.KnownItems;
import etamine.recipes.internal.MadeItems;
import etamine.recipes.internal.RecipeShelf;
import etamine.recipes.internal.allergen.RolledAllergens;
import etamine.recipes.internal.book.ShelvedRecipes;
import etamine.recipes.internal.find.IndexedSearch;
import etamine.recipes.internal.line.TypedLines;
import etamine.recipes.internal.need.GraphRecipes;
import etamine.recipes.internal.photo.BookPhotos;
import etamine.recipes.internal.revision.ShelfRevisions;
import etamine.recipes.internal.river.GraphRivers;
import etamine.recipes.internal.scale.ExactScaling;
import etamine.recipes.internal.scale.VesselSizes;
import etamine.recipes.internal.text.CardText;
import etamine.recipes.internal.trial.MeasuredTrials;
import etamine.recipes.internal.weight.WeighedBalances;
import etamine.testing.VolatileBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The bench's model on the real services, a book in memory and a short list of ingredients. */
final class Stove {
    private final Map<String, Item> listed = new TreeMap<>(Map.of(
            "celeriac",
            item(
                    "celeriac",
                    "Celeriac",
                    new Allergens(Set.of("celery"), Set.of(), true),
                    new Preparation(
                            "peeled, large dice",
                            Ratio.parse("0.74"),
                            List.of(new Equivalence(Quantity.parse("1 cup"), Quantity.parse("156 g"))))),
            "cream",
            item("cream", "Cream", Allergens.unknown())));

    final VolatileBook book = new VolatileBook();
    private final RecipeShelf shelf = new RecipeShelf(book);
    private final MadeItems made = new MadeItems(shelf, () -> Optional.of(this.items()));
    final GraphRecipes recipes = new GraphRecipes(shelf, () -> Optional.of(items()), made);
    final ShelvedRecipes writing = new ShelvedRecipes(shelf, () -> Optional.of(items()), made);
    final RecipePhotos photos = new BookPhotos(book, recipes, writing, writing, new CameraPictures());
    final UseLines lines = new TypedLines(() -> Optional.of(items()), made);
    final Kitchenware ware = new Kitchenware(
            recipes,
            writing,
            lines,
            new Kitchenware.Scales(
                    new ExactScaling(shelf, () -> Optional.of(items()), made),
                    new VesselSizes(),
                    new WeighedBalances(shelf, () -> Optional.of(items()), made)),
            new Kitchenware.Past(trials(), revisions()),
            search(),
            new Insight(
                    new RolledAllergens(() -> Optional.of(items()), made),
                    new GraphRivers(shelf, () -> Optional.of(items()), made),
                    Optional::empty,
                    Optional::empty,
                    () -> Optional.of(this.photos)),
            new Kitchenware.Neighbours(
                    () -> Optional.of(items()), () -> Optional.of(this.starter), Optional::empty, Optional::empty));
    final RecipesModel model = new RecipesModel(ware);
    final RecipeStory story = new RecipeStory(ware, model);

    private Trials trials() {
        return new MeasuredTrials(writing, shelf, () -> Optional.of(items()), made);
    }

    private Revisions revisions() {
        return new ShelfRevisions(writing, shelf, new CardText(() -> Optional.of(items()), made));
    }

    private RecipeSearch search() {
        KnownItems known = () -> Optional.of(items());
        return new IndexedSearch(shelf, known, made, new RolledAllergens(known, made));
    }

    final ItemStarter starter = new ItemStarter() {
        @Override
        public String start(Item wanted) {
            String id = wanted.name().toLowerCase(Locale.ROOT).replace(' ', '-');
            listed.put(
                    id,
                    item(
                            id,
                            wanted.name(),
                            wanted.allergens(),
                            wanted.preparations().toArray(Preparation[]::new)));
            return id;
        }

        @Override
        public void measure(String id, Equivalence measure) {
            List<Equivalence> all = new ArrayList<>(listed.get(id).measures());
            all.add(measure);
            listed.put(id, listed.get(id).withMeasures(all));
        }

        @Override
        public void prepare(String id, Preparation preparation) {
            List<Preparation> all = new ArrayList<>(listed.get(id).preparations());
            all.removeIf(each -> each.name().equals(preparation.name()));
            all.add(preparation);
            listed.put(id, listed.get(id).withPreparations(all));
        }
    };

    private static Item item(String id, String name, Allergens allergens, Preparation... preparations) {
        return new Item(
                id,
                name,
                "",
                false,
                "",
                Optional.empty(),
                Unit.KG,
                List.of(),
                List.of(preparations),
                allergens,
                Optional.empty());
    }

    private Items items() {
        return new Items() {
            @Override
            public Optional<Item> find(String id) {
                return Optional.ofNullable(all().get(id));
            }

            @Override
            public Map<String, Item> listed() {
                return Map.copyOf(listed);
            }

            @Override
            public Map<String, Item> all() {
                Map<String, Item> all = new TreeMap<>(made.items());
                all.putAll(listed);
                return all;
            }
        };
    }
}
