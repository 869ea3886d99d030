package etamine.checks.product;

import etamine.checks.product.ConsoleFront.Said;
import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The program as a process of its own, as the start script calls it. */
final class ProgramProcess {
    private static final int MINUTES = 2;

    private final Path folder;

    /** A program that is called from that folder. */
    ProgramProcess(Path folder) {
        this.folder = folder;
    }

    /** Runs one call to its end. */
    Said say(String... words) throws Exception {
        Path out = Files.createTempFile(folder, "said", ".out");
        Path err = Files.createTempFile(folder, "said", ".err");
        Process process = new ProcessBuilder(command(words))
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new AssertionError("The program did not end: " + List.of(words) + Files.readString(err));
        }
        return new Said(process.exitValue(), read(out), read(err));
    }

    private static String read(Path file) throws Exception {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    private static List<String> command(String... words) {
        Path launcher = Suite.APP.resolve("launcher");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-Detamine.app=" + Suite.APP,
                "-cp",
                launcher.resolve("etamine.launcher.jar") + File.pathSeparator + launcher.resolve("framework.jar"),
                "etamine.launcher.Launcher",
                "console"));
        command.addAll(List.of(words));
        return command;
    }
}
