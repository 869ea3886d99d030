package etamine.checks.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What a bundle exports is a promise for years: interfaces, values and failures, behind which everything may change. A
 * class may be exported only with an exemption that says why.
 */
class ExportedTypesTest {
    private static final String RULE = "exported-types";
    private static final String EXEMPTION = "etamine.base.Exemption";

    /** Widgets are classes by nature: the toolkit's own are extended and nested, not stood in for. */
    private static final String WIDGETS = "etamine.widgets";

    private static Map<String, String> exporters;
    private static List<JavaClass> exported;

    @BeforeAll
    static void readWhatIsExported() throws Exception {
        exporters = Jars.exporters();
        try (Stream<Path> bundles = Files.list(Jars.ROOT.resolve("bundles"))) {
            JavaClasses code = new ClassFileImporter()
                    .importPaths(bundles.map(folder -> folder.resolve("target/classes"))
                            .filter(Files::isDirectory)
                            .toList());
            exported = code.stream()
                    .filter(type -> exporters.containsKey(type.getPackageName()))
                    .filter(type -> !exporters.get(type.getPackageName()).equals(WIDGETS))
                    .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                    .toList();
        }
    }

    @Test
    void thereAreContractsToLookAt() {
        assertThat(exported).hasSizeGreaterThan(100);
    }

    @Test
    void areContractsValuesAndFailuresOrSayWhyNot() {
        assertThat(exported)
                .filteredOn(type -> !isContract(type) && exemption(type).isEmpty())
                .extracting(JavaClass::getFullName)
                .isEmpty();
    }

    @Test
    void noExemptionIsIdle() {
        assertThat(exported)
                .filteredOn(type -> isContract(type) && exemption(type).isPresent())
                .extracting(JavaClass::getFullName)
                .as("needs no exemption any more")
                .isEmpty();
    }

    @Test
    void anExemptClassSaysWhyAndIsFinalUnlessItIsToBeExtended() {
        List<JavaClass> exempt =
                exported.stream().filter(type -> exemption(type).isPresent()).toList();
        assertThat(exempt).isNotEmpty();
        for (JavaClass type : exempt) {
            String because = exemption(type).orElseThrow();
            assertThat(because).as(type.getName()).contains(" ").hasSizeGreaterThan(30);
            assertThat(type.getModifiers().contains(JavaModifier.FINAL) || because.contains("extended"))
                    .as(type.getName())
                    .isTrue();
        }
    }

    private static boolean isContract(JavaClass type) {
        return type.isInterface()
                || type.isAnnotation()
                || type.isRecord()
                || type.isEnum()
                || type.isAssignableTo(Throwable.class);
    }

    private static Optional<String> exemption(JavaClass type) {
        return type.tryGetAnnotationOfType(EXEMPTION)
                .filter(found -> RULE.equals(found.get("rule").orElse("")))
                .map(found -> String.valueOf(found.get("because").orElse("")));
    }
}
