package etamine.recipes.internal.line;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.kitchen.item.Preparation;
import etamine.kitchen.recipe.Basis;
import etamine.kitchen.recipe.Use;
import etamine.measures.Quantity;
import etamine.measures.Ratio;
import etamine.measures.Unit;
import etamine.recipes.UseLines.Reading;
import etamine.recipes.internal.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A line written for a use is read as that use, whatever items, preparations and amounts it has. */
class LineRoundTripTest {
    private static final List<String> WORDS = List.of(
            "red",
            "onion",
            "cream",
            "sel",
            "or",
            "of",
            "crème",
            "dice",
            "large",
            "AP",
            "2",
            "½",
            "(38 %)",
            "tsp",
            "x",
            "Öl",
            "南瓜",
            "пшено",
            "بصل",
            "to",
            "fresh",
            "ham-hock",
            "d'or",
            "kg");

    private static String words(Random random, int most) {
        List<String> words = new ArrayList<>();
        for (int i = random.nextInt(most); i >= 0; i--) {
            words.add(WORDS.get(random.nextInt(WORDS.size())) + (i > 0 && random.nextInt(5) == 0 ? "," : ""));
        }
        return String.join(" ", words);
    }

    private static Quantity amount(Random random) {
        Unit unit = random.nextInt(8) == 0
                ? Unit.word("sprig")
                : Unit.all().get(random.nextInt(Unit.all().size()));
        Ratio amount = random.nextBoolean()
                ? Ratio.of(1 + random.nextInt(2000), 1 + random.nextInt(16))
                : Ratio.of(1 + random.nextInt(100_000), 1000);
        return new Quantity(amount, unit);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34})
    void aWrittenLineReadsBackAsTheSameUse(long seed) {
        Random random = new Random(seed);
        Range range = new Range();
        for (int i = 0; i < 40; i++) {
            List<Preparation> preparations = new ArrayList<>();
            for (int j = random.nextInt(3); j > 0; j--) {
                String name = words(random, 3);
                if (preparations.stream().noneMatch(known -> known.name().equalsIgnoreCase(name))) {
                    preparations.add(Range.prepared(name, "0.8"));
                }
            }
            range.named("item-" + i, words(random, 4), preparations, "1 sprig = 2 g");
        }
        int byName = 0;
        for (int i = 0; i < 150; i++) {
            String item = "item-" + random.nextInt(40);
            List<Preparation> known = range.listed(item).preparations();
            Optional<String> as = known.isEmpty() || random.nextBoolean()
                    ? Optional.empty()
                    : Optional.of(known.get(random.nextInt(known.size())).name());
            List<String> or = random.nextInt(4) == 0 ? List.of("item-" + random.nextInt(40)) : List.of();
            Use use = new Use(item, amount(random), as, random.nextBoolean() ? Basis.AP : Basis.EP, or);

            String line = range.lines.write(use);

            assertThat(range.lines.read(line))
                    .as(line)
                    .isInstanceOfSatisfying(
                            Reading.Clear.class,
                            clear -> assertThat(clear.use()).as(line).isEqualTo(use));
            byName += line.contains(item) ? 0 : 1;
        }
        assertThat(byName).as("most lines are written with names").isGreaterThan(30);
    }
}
