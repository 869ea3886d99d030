package etamine.costing.internal.engine;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteDataSource;

/**
 * The same roll-up done as one would without an engine: by one recursive query over tables of the same lines, and by plain
 * recursion over decimals. Every recipe makes 1,000 g. Times are of the processor, so that what else runs on the machine
 * does not count against them.
 */
final class RollUpRivals {
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
    private static final BigDecimal MADE = BigDecimal.valueOf(1000);
    private static final String ROLL_UP = """
            with recursive part(recipe, item, amount) as (
                select recipe, item, amount from line
                union all
                select part.recipe, line.item, part.amount * line.amount / 1000
                from part join line on line.recipe = part.item where part.item >= %d)
            select part.recipe, sum(part.amount * price.amount)
            from part join price on price.item = part.item group by part.recipe order by part.recipe
            """;

    private final int bought;
    private final int lines;
    private final int[] items;
    private final double[] amounts;
    private final double[] prices;

    /** The lines of all recipes one after the other, so many each; items from {@code bought} on are made by recipes. */
    RollUpRivals(int bought, int lines, int[] items, double[] amounts, double[] prices) {
        this.bought = bought;
        this.lines = lines;
        this.items = items;
        this.amounts = amounts;
        this.prices = prices;
    }

    /** The cost of the last recipe and how long all of them took by one query, in ms. */
    double[] byQuery(int rounds) throws SQLException {
        SQLiteDataSource source = new SQLiteDataSource();
        source.setUrl("jdbc:sqlite::memory:");
        try (Connection connection = source.getConnection()) {
            fill(connection);
            double best = Double.MAX_VALUE;
            double last = 0;
            for (int round = 0; round < rounds; round++) {
                long start = CLOCK.getCurrentThreadCpuTime();
                last = query(connection);
                best = Math.min(best, (CLOCK.getCurrentThreadCpuTime() - start) / 1e6);
            }
            return new double[] {last, best};
        }
    }

    private double query(Connection connection) throws SQLException {
        double last = 0;
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(ROLL_UP.formatted(bought))) {
            while (rows.next()) {
                last = rows.getDouble(2);
            }
        }
        return last;
    }

    private void fill(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("create table line (recipe integer, item integer, amount real)");
            statement.execute("create table price (item integer primary key, amount real)");
        }
        connection.setAutoCommit(false);
        try (PreparedStatement line = connection.prepareStatement("insert into line values (?, ?, ?)")) {
            for (int at = 0; at < items.length; at++) {
                line.setInt(1, bought + at / lines);
                line.setInt(2, items[at]);
                line.setDouble(3, amounts[at]);
                line.addBatch();
            }
            line.executeBatch();
        }
        try (PreparedStatement price = connection.prepareStatement("insert into price values (?, ?)")) {
            for (int item = 0; item < bought; item++) {
                price.setInt(1, item);
                price.setDouble(2, prices[item]);
                price.addBatch();
            }
            price.executeBatch();
        }
        connection.commit();
        connection.setAutoCommit(true);
        try (Statement statement = connection.createStatement()) {
            statement.execute("create index line_recipe on line (recipe)");
            statement.execute("analyze");
        }
    }

    /** The cost of the last recipe and how long all of them took by recursion over decimals, in ms. */
    double[] byDecimals(int rounds) {
        BigDecimal[] exactAmounts = decimals(amounts);
        BigDecimal[] exactPrices = decimals(prices);
        double best = Double.MAX_VALUE;
        double last = 0;
        for (int round = 0; round < rounds; round++) {
            long start = CLOCK.getCurrentThreadCpuTime();
            for (int recipe = 0; recipe < items.length / lines; recipe++) {
                last = batch(recipe, exactAmounts, exactPrices).doubleValue();
            }
            best = Math.min(best, (CLOCK.getCurrentThreadCpuTime() - start) / 1e6);
        }
        return new double[] {last, best};
    }

    private BigDecimal batch(int recipe, BigDecimal[] exactAmounts, BigDecimal[] exactPrices) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int at = recipe * lines; at < (recipe + 1) * lines; at++) {
            BigDecimal each = items[at] < bought
                    ? exactPrices[items[at]]
                    : batch(items[at] - bought, exactAmounts, exactPrices).divide(MADE);
            sum = sum.add(exactAmounts[at].multiply(each));
        }
        return sum;
    }

    private static BigDecimal[] decimals(double[] values) {
        BigDecimal[] decimals = new BigDecimal[values.length];
        for (int i = 0; i < values.length; i++) {
            decimals[i] = BigDecimal.valueOf(values[i]);
        }
        return decimals;
    }
}
