package etamine.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * From the call of {@code product/start} to the first paint of the window on the demo kitchen, against a bare window of
 * the same toolkit, once as plain {@code java} starts it and once with the suite's settings. They take turns, so that a
 * busy spell hits all.
 */
final class StartBench implements Bench {
    private static final int ROUNDS = 9;
    private static final List<String> SETTINGS = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");

    private final Path product;

    StartBench(Path product) {
        this.product = product;
    }

    @Override
    public String name() {
        return "start";
    }

    @Override
    public List<String> measure() throws Exception {
        Path paint = Files.createTempFile("etamine-paint", ".txt");
        List<Start> plain = new ArrayList<>();
        List<Start> bare = new ArrayList<>();
        List<Start> suite = new ArrayList<>();
        start(suite(paint), paint); // lays the demo kitchen out and notes the classes
        for (int round = 0; round < ROUNDS; round++) {
            plain.add(start(bare(paint, List.of()), paint));
            bare.add(start(bare(paint, SETTINGS), paint));
            suite.add(start(suite(paint), paint));
        }
        Files.delete(paint);
        return List.of(
                line("bare window, plain java", plain),
                line("bare window, the suite's settings", bare),
                line("the suite on the demo kitchen", suite),
                "ratio of the medians to plain java: " + ratio(suite, plain),
                "ratio of the medians to the suite's settings: " + ratio(suite, bare));
    }

    private static String ratio(List<Start> starts, List<Start> floor) {
        return String.format(
                Locale.ROOT, "%.2f", (double) median(starts, Start::millis) / median(floor, Start::millis));
    }

    private ProcessBuilder bare(Path paint, List<String> settings) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(settings);
        command.add(
                "-Dswt.library.path=" + product.resolve("target").resolve("app").resolve("native"));
        command.add("-cp");
        command.add(product.resolve("target").resolve("bench") + File.pathSeparator + toolkit());
        command.add(BareWindow.class.getName());
        command.add(paint.toString());
        return new ProcessBuilder(command);
    }

    /** Only the toolkit's jars: a longer class path would slow the floor down. */
    private String toolkit() throws IOException {
        Path bundles = product.resolve("target").resolve("app").resolve("bundles");
        try (Stream<Path> jars = Files.list(bundles)) {
            return jars.map(Path::toString)
                    .filter(jar -> jar.contains("org.eclipse.swt"))
                    .collect(Collectors.joining(File.pathSeparator));
        }
    }

    private ProcessBuilder suite(Path paint) {
        String script = File.separatorChar == '/' ? "start" : "start.cmd";
        ProcessBuilder builder = new ProcessBuilder(product.resolve(script).toString());
        builder.environment().put("ETAMINE_PAINT", paint.toString());
        return builder;
    }

    private static Start start(ProcessBuilder builder, Path paint) throws Exception {
        Files.writeString(paint, "");
        builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
        long begin = System.currentTimeMillis();
        Process process = builder.start();
        long kilobytes = 0;
        while (process.isAlive()) {
            kilobytes = Math.max(kilobytes, residentKilobytes(process.toHandle()));
            Thread.sleep(10);
        }
        String moment = Files.readString(paint).strip();
        if (process.exitValue() != 0 || moment.isEmpty()) {
            throw new IOException("No window came: " + builder.command() + " ended with " + process.exitValue());
        }
        return new Start(Long.parseLong(moment) - begin, kilobytes);
    }

    /** Of the process and what it started; 0 where the system does not tell. */
    private static long residentKilobytes(ProcessHandle process) {
        long most = resident(process.pid());
        for (ProcessHandle child : process.descendants().toList()) {
            most = Math.max(most, resident(child.pid()));
        }
        return most;
    }

    private static long resident(long pid) {
        try {
            return Files.readAllLines(Path.of("/proc", Long.toString(pid), "status")).stream()
                    .filter(line -> line.startsWith("VmRSS:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")))
                    .findFirst()
                    .orElse(0);
        } catch (IOException e) {
            return 0; // it has just ended
        }
    }

    private static String line(String what, List<Start> starts) {
        return String.format(
                Locale.ROOT,
                "%s: median %d ms to the first paint (%d to %d), %d MB resident",
                what,
                median(starts, Start::millis),
                starts.stream().mapToLong(Start::millis).min().orElseThrow(),
                starts.stream().mapToLong(Start::millis).max().orElseThrow(),
                median(starts, Start::kilobytes) / 1024);
    }

    private static long median(List<Start> starts, Function<Start, Long> figure) {
        return starts.stream()
                .map(figure)
                .sorted(Comparator.naturalOrder())
                .toList()
                .get(starts.size() / 2);
    }

    private record Start(long millis, long kilobytes) {}
}
