package etamine.ingredients.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.base.Progress;
import etamine.base.verb.Report;
import etamine.base.verb.VerbCall;
import etamine.kitchen.find.Finder.Found;
import etamine.kitchen.item.Allergens;
import etamine.kitchen.item.Item;
import etamine.kitchen.item.ItemSource;
import etamine.kitchen.price.PriceQuote;
import etamine.measures.Equivalence;
import etamine.measures.Quantity;
import etamine.measures.Unit;
import etamine.testing.SetClock;
import etamine.testing.SetKitchen;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ItemsAndPricesTest {
    private final Pantry pantry = new Pantry();

    @BeforeEach
    void load() {
        pantry.load("""
                [{"id": "puree", "name": "Celeriac purée", "group": "Bought in", "countIn": "kg"},
                 {"id": "cream", "name": "Cream", "group": "Dairy", "countIn": "l", "contains": ["milk"],
                  "measures": [{"of": "1 cup", "is": "238 g"}], "price": {"amount": "4.00", "per": "1 kg"}},
                 {"id": "ice-cream", "name": "Ice cream", "group": "Dairy", "countIn": "l", "allergensKnown": true}]
                """);
    }

    private static Item made(String id) {
        return new Item(
                id,
                "Made " + id,
                "Components",
                true,
                "",
                Optional.empty(),
                Unit.G,
                List.of(new Equivalence(Quantity.parse("1 portion"), Quantity.parse("70 g"))),
                List.of(),
                Allergens.unknown(),
                Optional.empty());
    }

    @Test
    void addsWhatSourcesContributeAndKeepsTheListsOwnFacts() {
        Map<String, Item> contributed = Map.of("puree", made("puree"), "jus", made("jus"));
        ItemSource source = () -> contributed;
        pantry.items.addSource(source);

        Item puree = pantry.items.find("puree").orElseThrow();
        assertThat(puree.name()).isEqualTo("Celeriac purée");
        assertThat(puree.made()).isTrue();
        assertThat(puree.measures()).hasToString("[Equivalence[of=1 portion, is=70 g]]");
        assertThat(pantry.items.all().keySet()).containsExactly("cream", "ice-cream", "jus", "puree");
        assertThat(pantry.items.listed().keySet()).containsExactly("cream", "ice-cream", "puree");

        pantry.items.removeSource(source);
        assertThat(pantry.items.find("jus")).isEmpty();
        assertThat(pantry.items.find("puree").orElseThrow().measures()).isEmpty();
    }

    @Test
    void givesTheSameSnapshotUntilSomethingChanges() {
        Map<String, Item> before = pantry.items.all();
        assertThat(pantry.items.all()).isSameAs(before);

        pantry.load("[{\"id\": \"salt\", \"name\": \"Salt\"}]");

        assertThat(pantry.items.all()).isNotSameAs(before).containsKey("salt");
        assertThat(before).doesNotContainKey("salt");
    }

    @Test
    void quotesAWrittenPriceForTheDimensionTheItemIsCountedIn() {
        WrittenPrices prices = new WrittenPrices(pantry.shelf, SetKitchen.at("2026-11-24T09:00:00Z"));

        PriceQuote quote = prices.quote("cream").orElseThrow();
        // 238 g a US cup of 236.5882365 ml: 1 kg fills 994.068... ml. USDA SR28 (2015), WEIGHT, row 01053 (published)
        assertThat(quote.price().per().unit()).isEqualTo(Unit.L);
        assertThat(quote.price().in(Unit.L).amount()).isEqualByComparingTo("4.0239");
        assertThat(prices.quote("puree")).isEmpty();
        assertThat(prices.rank()).isEqualTo(40);
    }

    @Test
    void findsByNameWithoutCaseAndAccentsBestFirst() {
        IngredientFinder finder = new IngredientFinder(pantry.shelf);

        assertThat(finder.find("cream", 5)).extracting(Found::title).containsExactly("Cream", "Ice cream");
        assertThat(finder.find("PUREE", 5)).extracting(Found::title).containsExactly("Celeriac purée");
        assertThat(finder.find("cream", 1)).hasSize(1);
    }

    @Test
    void listsItemsOnTheConsole() {
        ItemsVerb verb = new ItemsVerb(pantry.items, pantry.list);

        Report report = verb.run(new VerbCall(List.of("cream"), Map.of(), "", Path.of(""), Progress.unseen()));

        assertThat(report.lines()).hasSize(4);
        assertThat(report.lines().get(1))
                .contains("cream")
                .contains("4.00 / 1 kg")
                .contains("milk; rest unknown");
        assertThat(report.lines().get(2)).contains("none listed");
        assertThat(report.lines().get(3)).contains("Unknown is not absent").contains("local rules");
        assertThat(report.json().toString()).contains("allergensKnown=false");
    }

    @Test
    void reportsDocumentsThatCannotBeRead() {
        pantry.book.write(
                "Damage",
                transaction -> transaction.save(
                        "ingredients", "odd", 0, "{\"id\": \"odd\", \"name\": \"Odd\", \"keeps\": \"long\"}"));

        assertThat(new IngredientCheck(pantry.shelf).check()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("unreadable");
            assertThat(problem.where()).isEqualTo("ingredients/odd");
        });
        assertThat(pantry.section.dump()).hasSize(4);
    }

    @Test
    void remembersWhenAPriceWasWrittenAndWhatTheItemWas() {
        SetKitchen kitchen = SetKitchen.at("2026-11-24T09:00:00Z");
        SetClock clock = SetClock.at("2026-11-20T09:00:00Z");
        Pantry dated = new Pantry(clock);
        dated.load("[{\"id\": \"cream\", \"name\": \"Cream\", \"countIn\": \"l\","
                + " \"price\": {\"amount\": \"4.00\", \"per\": \"1 l\"}}]");
        clock.set(Instant.parse("2026-11-22T09:00:00Z"));
        dated.load("[{\"id\": \"cream\", \"name\": \"Double cream\", \"countIn\": \"l\","
                + " \"price\": {\"amount\": \"4.00\", \"per\": \"1 l\"}}]");
        WrittenPrices prices = new WrittenPrices(dated.shelf, kitchen);
        assertThat(prices.quote("cream").orElseThrow().asOf()).contains(LocalDate.of(2026, 11, 20));
        clock.set(Instant.parse("2026-11-23T09:00:00Z"));
        dated.load("[{\"id\": \"cream\", \"name\": \"Double cream\", \"countIn\": \"l\","
                + " \"price\": {\"amount\": \"4.56\", \"per\": \"1 l\"}},"
                + " {\"id\": \"salt\", \"name\": \"Salt\", \"countIn\": \"kg\"}]");

        assertThat(prices.quote("cream").orElseThrow().asOf()).contains(LocalDate.of(2026, 11, 23));
        assertThat(prices.quote("cream", LocalDate.of(2026, 11, 22))
                        .orElseThrow()
                        .price()
                        .amount())
                .isEqualByComparingTo("4.00");
        assertThat(prices.quote("cream", LocalDate.of(2026, 11, 19))).isEmpty();
        assertThat(prices.history("cream"))
                .extracting(quote ->
                        quote.asOf().orElseThrow() + " " + quote.price().amount())
                .containsExactly("2026-11-20 4.00", "2026-11-23 4.56");
        Map<String, Item> then = dated.items.asOf(Instant.parse("2026-11-21T00:00:00Z"));
        assertThat(then.get("cream").name()).isEqualTo("Cream");
        assertThat(then).as("what was written later stands as first written").containsKey("salt");
    }
}
