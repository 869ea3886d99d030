package etamine.checks.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import etamine.kitchen.item.Item;
import etamine.measures.Quantity;
import java.io.IOException;
import java.nio.file.Files;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the demo kitchen's file says by itself; what the program makes of it is in {@link DemoKitchenTest}. */
class DemoDataTest {
    private static final long LARGEST = 2_500_000;

    private final ObjectNode file = DemoFile.read();
    private final WrittenKitchen kitchen = new WrittenKitchen(file);

    @Test
    void theHistoryIsTheOneThatFollowsFromTheWrittenPart() throws IOException {
        ObjectNode again = file.deepCopy();
        new DemoHistory(again).into(again);
        assertThat(Files.readString(DemoFile.path()))
                .as("the written part has changed: run DemoHistory and commit the file")
                .isEqualTo(DemoFile.text(again));
    }

    @Test
    void isSmallEnoughToShip() throws IOException {
        assertThat(Files.size(DemoFile.path())).isLessThan(LARGEST);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            ingredients, 85,  100
            recipes,     45,  60
            suppliers,   5,   5
            offers,      130, 170
            pars,        55,  75
            mix,         12,  12
            use,         1,   3
            onOrder,     1,   4
            """)
    void hasAsMuchAsTheDesignAsksFor(String section, int least, int most) {
        assertThat(file.path(section).size()).isBetween(least, most);
    }

    @Test
    void nobodyCanBeReachedAndNoArticleExists() {
        assertThat(texts("suppliers", "email")).hasSize(5).allMatch(address -> address.endsWith(".example"));
        List<String> numbers = texts("offers", "gtin");
        assertThat(numbers).hasSizeGreaterThan(80).allMatch(number -> number.matches("2[0-9]{12}"));
        assertThat(numbers).allMatch(DemoDataTest::checkDigitFits);
    }

    /** GS1 General Specifications, section 7.9: weights 3 and 1 from the right, filled up to ten - published. */
    private static boolean checkDigitFits(String number) {
        int last = number.length() - 1;
        int sum = IntStream.range(0, last)
                .map(i -> (number.charAt(i) - '0') * ((last - i) % 2 == 1 ? 3 : 1))
                .sum();
        return (10 - sum % 10) % 10 == number.charAt(last) - '0';
    }

    @Test
    void nobodyDeliversOnTheDayTheKitchenIsClosed() {
        for (JsonNode supplier : file.path("suppliers")) {
            assertThat(supplier.path("deliveryDays").toString()).doesNotContain("MO");
        }
        assertThat(covers().keySet()).noneMatch(day -> day.getDayOfWeek() == DayOfWeek.MONDAY);
    }

    @Test
    void theWeekHasItsUsualShape() {
        Map<DayOfWeek, List<Integer>> week = new TreeMap<>();
        covers().forEach((day, count) -> week.computeIfAbsent(day.getDayOfWeek(), key -> new ArrayList<>())
                .add(count));
        assertThat(mean(week.get(DayOfWeek.SATURDAY))).isGreaterThan(1.4 * mean(week.get(DayOfWeek.TUESDAY)));
        assertThat(mean(week.get(DayOfWeek.FRIDAY))).isGreaterThan(1.4 * mean(week.get(DayOfWeek.TUESDAY)));
        assertThat(week.keySet()).hasSize(6);
        week.values().forEach(days -> assertThat(days).hasSize(10));
    }

    @Test
    void everyGuestHasOneMainAndMostHaveMore() {
        Map<String, Double> perCover = new HashMap<>();
        file.path("mix")
                .forEach(node -> perCover.put(
                        node.path("recipe").asText(),
                        Double.valueOf(node.path("perCover").asText())));
        double mains = perCover.get("plate-fowl")
                + perCover.get("plate-pudding")
                + perCover.get("plate-hake")
                + perCover.get("plate-barley");
        double starters =
                perCover.get("plate-beetroot") + perCover.get("plate-leek-tart") + perCover.get("plate-mussels");
        double desserts = perCover.get("plate-apple") + perCover.get("plate-chocolate");
        assertThat(mains).isBetween(0.999, 1.001);
        assertThat(starters).isBetween(0.5, 0.9);
        assertThat(desserts).isBetween(0.4, 0.8);
    }

    @Test
    void salesFollowCoversAndMix() {
        Map<String, Integer> sold = new HashMap<>();
        file.path("sales")
                .forEach(node -> sold.merge(
                        node.path("recipe").asText(), node.path("sold").asInt(), Integer::sum));
        int served = covers().entrySet().stream()
                .filter(day -> day.getKey().isBefore(kitchen.today()))
                .mapToInt(Map.Entry::getValue)
                .sum();
        file.path("mix").forEach(node -> {
            double expected = Double.parseDouble(node.path("perCover").asText()) * served;
            assertThat(sold.get(node.path("recipe").asText()) / expected)
                    .as(node.path("recipe").asText())
                    .isBetween(0.93, 1.07);
        });
    }

    @Test
    void theShelfIsNeverBelowNothing() {
        Map<String, Long> onHand = new HashMap<>();
        file.path("stock").forEach(node -> onHand.merge(node.path("item").asText(), base(node), Long::sum));
        String before = "";
        for (JsonNode movement : file.path("movements")) {
            assertThat(movement.path("at").asText()).isGreaterThanOrEqualTo(before);
            before = movement.path("at").asText();
            boolean leaves = Set.of("used", "sold", "wasted", "staff", "given", "sent", "resold")
                    .contains(movement.path("kind").asText());
            long left =
                    onHand.merge(movement.path("item").asText(), leaves ? -base(movement) : base(movement), Long::sum);
            assertThat(left).as(movement.toString()).isNotNegative();
        }
    }

    @Test
    void everythingThatCameSaysWhatItCost() {
        for (JsonNode movement : file.path("movements")) {
            if (Set.of("received", "made").contains(movement.path("kind").asText())) {
                assertThat(movement.has("unitCost")).as(movement.toString()).isTrue();
            }
        }
    }

    @Test
    void creamHasGoneUpByFourteenPercent() {
        List<ListedPack> prices = kitchen.packs("cream").stream()
                .filter(pack -> pack.code().equals("D-104"))
                .toList();
        assertThat(prices).hasSize(2);
        double rise = prices.get(1).perBase().dividedBy(prices.get(0).perBase()).doubleValue();
        assertThat(rise).isBetween(1.135, 1.145);
    }

    @Test
    void someAllergensAreUnknownAndSomeMayBeThere() {
        List<JsonNode> ingredients = list("ingredients");
        assertThat(ingredients)
                .filteredOn(node -> !node.path("allergensKnown").asBoolean())
                .hasSizeBetween(4, 12);
        assertThat(ingredients)
                .filteredOn(node -> !node.path("mayContain").isEmpty())
                .hasSizeGreaterThan(5);
        assertThat(ingredients)
                .filteredOn(node -> !node.path("contains").isEmpty())
                .hasSizeGreaterThan(20);
    }

    private long base(JsonNode movement) {
        Item item = kitchen.items().get(movement.path("item").asText());
        Quantity quantity = Quantity.parse(movement.path("quantity").asText());
        return item.converter().convert(quantity, item.dimension()).orThrow().toBase();
    }

    private Map<LocalDate, Integer> covers() {
        Map<LocalDate, Integer> covers = new TreeMap<>();
        file.path("covers")
                .forEach(node -> covers.put(
                        LocalDate.parse(node.path("date").asText()),
                        node.path("covers").asInt()));
        return covers;
    }

    private List<JsonNode> list(String section) {
        return StreamSupport.stream(file.path(section).spliterator(), false).toList();
    }

    private List<String> texts(String section, String member) {
        return list(section).stream()
                .filter(node -> node.has(member))
                .map(node -> node.path(member).asText())
                .toList();
    }

    private static double mean(List<Integer> counts) {
        return counts.stream().mapToInt(Integer::intValue).average().orElseThrow();
    }
}
