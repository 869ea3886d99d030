package etamine.ingredients;

import etamine.ingredients.YieldTest.Kind;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says which tests a working yield rests on. */
final class YieldWords {
    private YieldWords() {}

    static String of(List<YieldTest> tests) {
        String said = Stream.of(Kind.values())
                .map(kind -> tests.stream().filter(test -> test.kind() == kind).toList())
                .filter(some -> !some.isEmpty())
                .map(YieldWords::ofOneKind)
                .collect(Collectors.joining(", times "));
        return said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1);
    }

    private static String ofOneKind(List<YieldTest> tests) {
        String kind = tests.get(0).kind().name().toLowerCase(Locale.ROOT);
        List<LocalDate> days = tests.stream().map(YieldTest::date).sorted().toList();
        if (tests.size() == 1) {
            YieldTest only = tests.get(0);
            String who = only.by().isEmpty() ? "" : " by " + only.by();
            return kind + " test of " + only.date() + who + ", " + only.in() + " to " + only.out();
        }
        return "mean of " + tests.size() + " " + kind + " tests, " + days.get(0) + " to " + days.get(days.size() - 1);
    }
}
