package etamine.ingredients.ui.internal;

import etamine.bench.Bench;
import etamine.ingredients.internal.IngredientFinder;
import etamine.ingredients.internal.IngredientShelf;
import etamine.ingredients.internal.MergedItems;
import etamine.ingredients.internal.ResourceStarters;
import etamine.ingredients.internal.ShelvedIngredients;
import etamine.ingredients.internal.WholeBookMerges;
import etamine.kitchen.house.House;
import etamine.kitchen.house.Kitchen;
import etamine.measures.MeasureStyle;
import etamine.storage.Book;
import etamine.storage.sql.internal.SqliteBooks;
import java.nio.file.Files;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;

/** The ingredient list of 5,000: its rows, a find, and the search for what is there twice. */
public final class ListBench implements Bench {
    private static final int INGREDIENTS = 5_000;
    private static final int TIMES = 40;

    @Override
    public String name() {
        return "ingredients";
    }

    @Override
    public List<String> measure() throws Exception {
        String location =
                Files.createTempDirectory("etamine-bench").resolve("book").toString();
        try (Book book = new SqliteBooks().create(location)) {
            fill(book);
            IngredientShelf shelf = new IngredientShelf(book);
            ShelvedIngredients list = new ShelvedIngredients(shelf);
            WholeBookMerges merges = new WholeBookMerges(shelf, list);
            IngredientsModel model = new IngredientsModel(new Known(
                    list,
                    new MergedItems(shelf),
                    merges,
                    new ResourceStarters(shelf),
                    new StandingHouse(),
                    Known.Others.NONE));
            IngredientFinder finder = new IngredientFinder(shelf);
            double floor = median(() -> names(list));
            double rows = median(model::rows);
            return List.of(
                    line("sorting " + INGREDIENTS + " names alone", floor),
                    line("rows of the list", rows) + String.format(Locale.ROOT, ", %.1f times the floor", rows / floor),
                    line("find by a part of a name", median(() -> finder.find("ing 49", 20))),
                    line("search for what is there twice", median(merges::duplicates)));
        }
    }

    private static List<String> names(ShelvedIngredients list) {
        List<String> names = new ArrayList<>();
        list.all().values().forEach(ingredient -> names.add(ingredient.item().name()));
        names.sort(String.CASE_INSENSITIVE_ORDER);
        return names;
    }

    private static void fill(Book book) {
        book.write("Fill", transaction -> {
            for (int i = 0; i < INGREDIENTS; i++) {
                String id = "thing-" + i;
                String json = "{\"id\": \"" + id + "\", \"name\": \"Thing " + (i * 7919 % INGREDIENTS)
                        + "\", \"group\": \"Group " + i % 12
                        + "\", \"countIn\": \"kg\", \"contains\": [\"celery\"], \"price\": {\"amount\": \"2.10\", \"per\": \"1 kg\"}}";
                transaction.save("ingredients", id, 0, json);
            }
            return 0;
        });
    }

    private static double median(Runnable work) {
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < TIMES; i++) {
            long start = System.nanoTime();
            work.run();
            times.add((System.nanoTime() - start) / 1e6);
        }
        return times.stream().sorted().skip(TIMES / 2).findFirst().orElseThrow();
    }

    private static String line(String what, double millis) {
        return String.format(Locale.ROOT, "%s: %.2f ms", what, millis);
    }

    /** A house that stays as it is. */
    private static final class StandingHouse implements Kitchen {
        private House house = new House("Bench", Currency.getInstance("EUR"), ZoneOffset.UTC, MeasureStyle.METRIC);

        @Override
        public House house() {
            return house;
        }

        @Override
        public void change(House other) {
            house = other;
        }

        @Override
        public Clock clock() {
            return Clock.systemUTC();
        }
    }
}
