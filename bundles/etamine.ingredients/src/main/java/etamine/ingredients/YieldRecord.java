package etamine.ingredients;

import etamine.ingredients.YieldTest.Kind;
import etamine.kitchen.yield.Spread;
import etamine.measures.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where the yield of one preparation comes from.
 *
 * @param note in words, such as a test in this kitchen; empty when nobody said
 * @param tests the weighings, as they were recorded
 * @param history the working yields that were accepted, oldest first
 */
public record YieldRecord(String note, List<YieldTest> tests, List<YieldChange> history) {
    /** Nothing recorded. */
    public static final YieldRecord NONE = new YieldRecord("", List.of(), List.of());

    /** Copies the lists. */
    public YieldRecord {
        tests = List.copyOf(tests);
        history = List.copyOf(history);
    }

    /** The same with another note. */
    public YieldRecord withNote(String changed) {
        return new YieldRecord(changed, tests, history);
    }

    /** The same with other tests. */
    public YieldRecord withTests(List<YieldTest> changed) {
        return new YieldRecord(note, changed, history);
    }

    /** What the tests of a kind say together; empty when there are none. */
    public Optional<Spread> spread(Kind kind) {
        return Spread.of(ofKind(tests, kind).map(YieldTest::yield).toList());
    }

    /**
     * The yield that some of the tests give: the mean of each kind, and of both kinds the product, since what is lost
     * in cooking is lost of what trimming left. Empty for no tests.
     */
    public static Optional<Ratio> yield(List<YieldTest> of) {
        return Stream.of(Kind.values())
                .flatMap(
                        kind -> Spread.of(ofKind(of, kind).map(YieldTest::yield).toList()).stream())
                .map(Spread::mean)
                .reduce(Ratio::times);
    }

    /** The same after a yield was accepted: the tests it rests on are marked, the note and the history say it. */
    YieldRecord accepting(List<Integer> rests, YieldChange change) {
        List<YieldTest> marked = new ArrayList<>();
        for (int i = 0; i < tests.size(); i++) {
            marked.add(tests.get(i).withAccepted(rests.contains(i)));
        }
        String who = change.by().isEmpty() ? "" : " by " + change.by();
        String said = change.source() + "; accepted " + change.date() + who + ".";
        return new YieldRecord(
                said, marked, Stream.concat(history.stream(), Stream.of(change)).toList());
    }

    private static Stream<YieldTest> ofKind(List<YieldTest> tests, Kind kind) {
        return tests.stream().filter(test -> test.kind() == kind);
    }
}
