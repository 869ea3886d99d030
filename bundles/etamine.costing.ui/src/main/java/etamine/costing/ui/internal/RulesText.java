package etamine.costing.ui.internal;

import etamine.costing.CostRules;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Endings and rates as they are typed. */
final class RulesText {
    private RulesText() {}

    static String endings(CostRules rules) {
        return String.join(
                " ", rules.endings().stream().map(BigDecimal::toPlainString).toList());
    }

    static String stations(CostRules rules) {
        List<String> lines = new ArrayList<>();
        rules.labour().stations().forEach((name, rate) -> lines.add(name + " " + rate.toPlainString()));
        return String.join("\n", lines);
    }

    /** What is wrong with what was typed, if anything. */
    static Optional<String> problem(String endings, String stations) {
        try {
            readEndings(endings);
            readStations(stations);
            return Optional.empty();
        } catch (IllegalArgumentException wrong) {
            return Optional.of(String.valueOf(wrong.getMessage()));
        }
    }

    /** Endings set apart by spaces; {@code 50} and {@code .50} mean 0.50. */
    static List<BigDecimal> readEndings(String typed) {
        List<BigDecimal> endings = new ArrayList<>();
        for (String word : typed.strip().replace(",", ".").split("\\s+")) {
            if (!word.isEmpty()) {
                endings.add(ending(word));
            }
        }
        return endings;
    }

    private static BigDecimal ending(String word) {
        if (!word.matches("0?\\.\\d{1,3}|\\d{2}|0")) {
            throw new IllegalArgumentException(
                    "\u201c" + word + "\u201d is no ending of a price; write endings such as 0.50 0.95.");
        }
        return word.matches("\\d{2}") ? new BigDecimal("0." + word) : new BigDecimal("0" + word.replaceFirst("^0", ""));
    }

    /** A station's name and its rate on each line. */
    static Map<String, BigDecimal> readStations(String typed) {
        Map<String, BigDecimal> stations = new LinkedHashMap<>();
        for (String line : typed.split("\\R")) {
            String text = line.strip();
            if (!text.isEmpty()) {
                int gap = text.lastIndexOf(' ');
                String rate = text.substring(gap + 1).replace(',', '.');
                if (gap < 1 || !rate.matches("\\d{1,6}(\\.\\d{1,4})?")) {
                    throw new IllegalArgumentException("Write a station and what an hour there costs, such as sauce"
                            + " 16.50, instead of \u201c" + text + "\u201d.");
                }
                stations.put(text.substring(0, gap).replaceFirst("[:=]$", "").strip(), new BigDecimal(rate));
            }
        }
        return stations;
    }
}
