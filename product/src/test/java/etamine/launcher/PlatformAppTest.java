package etamine.launcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.osgi.framework.Bundle;
import org.osgi.framework.Constants;

/** Runs after the assembly, on what it laid out. */
class PlatformAppTest {
    @TempDir
    Path folder;

    private ProgramFolder program;

    @BeforeEach
    void layOut() throws IOException {
        program = new ProgramFolder(Files.createDirectory(folder.resolve("app")));
    }

    @AfterEach
    void takeApart() throws IOException {
        program.close();
    }

    static List<String> features() throws IOException {
        try (var lists = Files.list(ProgramFolder.ASSEMBLED.resolve("features"))) {
            return lists.map(list -> list.getFileName().toString().replace(".list", ""))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("features")
    void startsEveryBundleOfEveryFeature(String feature) throws StartException {
        try (Platform platform = new Platform(program.settings("window", feature))) {
            platform.start();
            assertThat(platform.failed()).isEmpty();
            assertThat(platform.context().getBundles())
                    .allMatch(bundle -> bundle.getState() == Bundle.RESOLVED && !mustRun(bundle)
                            || (bundle.getState() & (Bundle.ACTIVE | Bundle.STARTING)) != 0);
        }
    }

    @Test
    void installsNoWindowForTheConsole() throws StartException {
        try (Platform platform = new Platform(program.settings("console", "suite"))) {
            platform.start();
            assertThat(names(platform))
                    .contains("etamine.ordering", "etamine.console")
                    .noneMatch(name -> name.startsWith("org.eclipse.") || name.endsWith(".ui"));
        }
    }

    @Test
    void bringsTheToolkitsRuntimeUpWhenItIsFirstUsed() throws Exception {
        try (Platform platform = new Platform(program.settings("window", "window"))) {
            platform.start();
            find(platform, "org.eclipse.jface").loadClass("org.eclipse.jface.util.SafeRunnable");
            find(platform, "org.eclipse.equinox.common").loadClass("org.eclipse.core.runtime.SafeRunner");
            assertThat(find(platform, "org.eclipse.equinox.common").getState()).isEqualTo(Bundle.ACTIVE);
            assertThat(platform.failed()).isEmpty();
        }
    }

    @Test
    void goesOnWithoutAModuleThatThrows() throws Exception {
        new TinyBundle("etamine.larder").activator(ThrowingActivator.class).write(program.module("larder.jar"));
        new TinyBundle("etamine.soup").write(program.module("soup.jar"));
        try (Platform platform = new Platform(program.settings("console", "base"))) {
            platform.start();
            assertThat(platform.failed())
                    .containsOnlyKeys("etamine.larder")
                    .containsEntry("etamine.larder", "IllegalStateException: the larder is locked");
            assertThat(find(platform, "etamine.soup").getState()).isEqualTo(Bundle.ACTIVE);
        }
    }

    @Test
    void goesOnWithoutAModuleWhoseFileIsBroken() throws Exception {
        Files.writeString(program.module("torn.jar"), "not a jar");
        new TinyBundle("etamine.soup")
                .header("Import-Package", "kitchen.spoons")
                .write(program.module("soup.jar"));
        try (Platform platform = new Platform(program.settings("console", "base"))) {
            platform.start();
            assertThat(platform.failed()).containsOnlyKeys("torn.jar", "etamine.soup");
            assertThat(platform.failed().get("etamine.soup")).contains("kitchen.spoons");
        }
    }

    @Test
    void stopsWithTheReasonWhenAVitalBundleThrows() throws Exception {
        Path jar = new TinyBundle("etamine.larder")
                .activator(ThrowingActivator.class)
                .write(folder.resolve("l.jar"));
        program.feature("larder", "needs base", "vital", "bundle " + jar);
        try (Platform platform = new Platform(program.settings("console", "larder"))) {
            assertThatThrownBy(platform::start)
                    .isInstanceOf(StartException.class)
                    .hasMessage("Bundle etamine.larder did not start: IllegalStateException: the larder is locked");
        }
    }

    @Test
    void stopsWithTheReasonWhenAVitalFileIsMissing() throws Exception {
        program.feature("larder", "needs base", "vital", "bundle none.jar");
        try (Platform platform = new Platform(program.settings("console", "larder"))) {
            assertThatThrownBy(platform::start)
                    .isInstanceOf(StartException.class)
                    .hasMessageStartingWith("Bundle none.jar did not start");
        }
    }

    @Test
    void saysWhatIsMissingWhenNobodyTakesTheMainThread() throws Exception {
        try (Platform platform = new Platform(program.settings("console", "platform"))) {
            platform.start();
            assertThatThrownBy(platform::call)
                    .isInstanceOf(StartException.class)
                    .hasMessageStartingWith("The console was not ready after 1 s.");
        }
    }

    @Test
    void handsTheCallingThreadAndTheArgumentsOver() throws Exception {
        new TinyBundle("etamine.probe").activator(ProbeActivator.class).write(program.module("probe.jar"));
        String thread = Thread.currentThread().getName();
        try (Platform platform = new Platform(program.settings("probe", "base", thread, "7"))) {
            platform.start();
            assertThat(platform.call()).isEqualTo(7);
        }
    }

    @Test
    void removesItsFolderAndRunsBesideAnother() throws Exception {
        Platform first = new Platform(program.settings("console", "base"));
        Platform second = new Platform(program.settings("console", "base"));
        first.start();
        second.start();
        Path cache = Path.of(first.context().getProperty(Constants.FRAMEWORK_STORAGE));
        assertThat(cache).isNotEqualTo(Path.of(second.context().getProperty(Constants.FRAMEWORK_STORAGE)));
        first.close();
        first.close();
        assertThat(cache).doesNotExist();
        assertThat(find(second, "etamine.base").getState()).isEqualTo(Bundle.ACTIVE);
        second.close();
    }

    private static List<String> names(Platform platform) {
        return Arrays.stream(platform.context().getBundles())
                .map(Bundle::getSymbolicName)
                .toList();
    }

    private static Bundle find(Platform platform, String name) {
        return Arrays.stream(platform.context().getBundles())
                .filter(bundle -> name.equals(bundle.getSymbolicName()))
                .findFirst()
                .orElseThrow();
    }

    private static boolean mustRun(Bundle bundle) {
        return bundle.getHeaders("").get(Constants.FRAGMENT_HOST) == null
                && (bundle.getSymbolicName().startsWith("etamine.")
                        || bundle.getHeaders("").get(Constants.BUNDLE_ACTIVATOR) != null);
    }
}
