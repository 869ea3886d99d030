package etamine.checks.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What every bundle looks like from outside. */
class BundleShapeTest {
    private static final Map<String, Manifest> OWN = Jars.own();

    @Test
    void exportsNoInternalPackageAndImportsNone() {
        OWN.forEach((bundle, manifest) -> {
            assertThat(Jars.packages(manifest, "Export-Package")).as(bundle).noneMatch(BundleShapeTest::internal);
            assertThat(Jars.packages(manifest, "Import-Package")).as(bundle).noneMatch(BundleShapeTest::internal);
        });
    }

    /** A screen that exports something becomes a place for others to lean on. */
    @Test
    void screensAndFrontsExportNothing() {
        OWN.forEach((bundle, manifest) -> {
            if (bundle.endsWith(".ui")
                    || Set.of("etamine.shell.app", "etamine.storage.sql", "etamine.console")
                            .contains(bundle)) {
                assertThat(Jars.packages(manifest, "Export-Package")).as(bundle).isEmpty();
            }
        });
    }

    /** One name everywhere: folder, artifact, bundle and the root of its packages. */
    @Test
    void folderArtifactBundleAndPackageHaveOneName() throws IOException {
        List<Path> folders;
        try (var files = Files.list(Jars.ROOT.resolve("bundles"))) {
            folders = files.filter(Files::isDirectory).sorted().toList();
        }
        assertThat(folders).hasSizeGreaterThan(20);
        for (Path folder : folders) {
            String name = folder.getFileName().toString();
            assertThat(Files.readString(folder.resolve("pom.xml"))).contains("<artifactId>" + name + "</artifactId>");
            Path sources = folder.resolve("src/main/java");
            if (Files.isDirectory(sources)) {
                assertThat(sources.resolve(name.replace('.', '/'))).as(name).isDirectory();
            }
        }
    }

    /** Class names in headers would be ours to keep for ever; activators hide what a component needs. */
    @Test
    void noBundleHasAnActivatorOrRequiresABundle() {
        OWN.forEach((bundle, manifest) -> {
            assertThat(manifest.getMainAttributes().getValue("Bundle-Activator"))
                    .as(bundle)
                    .isNull();
            assertThat(manifest.getMainAttributes().getValue("Require-Bundle"))
                    .as(bundle)
                    .isNull();
        });
    }

    @Test
    void everyPackageOfAnExportingBundleHasItsPage() throws IOException {
        for (String bundle : OWN.keySet()) {
            Path sources = Jars.ROOT.resolve("bundles").resolve(bundle).resolve("src/main/java");
            if (!Files.isDirectory(sources)) {
                continue;
            }
            try (var files = Files.walk(sources)) {
                Set<Path> folders = files.filter(file -> file.toString().endsWith(".java"))
                        .map(Path::getParent)
                        .collect(Collectors.toSet());
                for (Path folder : folders) {
                    Path page = folder.resolve("package-info.java");
                    assertThat(page).exists();
                    assertThat(Files.readString(page))
                            .as(page.toString())
                            .contains("/**")
                            .contains("@NullMarked");
                }
            }
        }
    }

    private static boolean internal(String name) {
        return name.startsWith("etamine") && name.contains(".internal");
    }
}
