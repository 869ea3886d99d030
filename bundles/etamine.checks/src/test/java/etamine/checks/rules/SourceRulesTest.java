package etamine.checks.rules;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaConstructorCall;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Rules about the code itself, each with the reason for it. */
class SourceRulesTest {
    private static final String[] SCREENS = {
        "etamine..ui..", "etamine.shell..", "etamine.widgets..", "etamine.testing..", "etamine.launcher.."
    };
    private static JavaClasses code;

    @BeforeAll
    static void readTheBuiltClasses() throws Exception {
        List<Path> folders;
        try (Stream<Path> bundles = Files.list(Jars.ROOT.resolve("bundles"))) {
            folders = Stream.concat(bundles, Stream.of(Jars.ROOT.resolve("product")))
                    .map(folder -> folder.resolve("target/classes"))
                    .filter(Files::isDirectory)
                    .toList();
        }
        code = new ClassFileImporter().importPaths(folders);
    }

    @Test
    void thereIsCodeToLookAt() {
        assertThat(code.size()).isGreaterThan(300);
    }

    @Test
    void domainKnowsNoScreen() {
        noClasses()
                .that()
                .resideOutsideOfPackages(SCREENS)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.eclipse..")
                .because("the console and the tests are fronts of the same services")
                .check(code);
    }

    @Test
    void packagesFormNoCycle() {
        slices().matching("etamine.(**)")
                .should()
                .beFreeOfCycles()
                .because("a cycle of packages cannot be understood or moved in parts")
                .check(code);
    }

    @Test
    void noKitchenModuleKnowsAnother() {
        for (String module :
                Set.of("ingredients", "recipes", "costing", "catalogue", "inventory", "diary", "ordering", "book")) {
            noClasses()
                    .that()
                    .resideInAnyPackage("etamine." + module + "..")
                    .should()
                    .dependOnClassesThat(otherModuleThan(module))
                    .because("every subset of modules must start; they meet in etamine.kitchen")
                    .check(code);
        }
    }

    @Test
    void contractsAndLedgersHoldNoFloatingPoint() {
        classes()
                .that()
                .resideInAnyPackage("etamine.measures..", "etamine.kitchen..", "etamine.storage..")
                .and()
                .resideOutsideOfPackage("..internal..")
                .should(haveNoFloatingPointInTheirInterface())
                .because("0.1 + 0.2 is not 0.3, and money is counted")
                .check(code);
    }

    @Test
    void nobodyPrintsButTheConsoleAndTheLauncher() {
        noClasses()
                .that()
                .resideOutsideOfPackages("etamine.console..", "etamine.launcher..")
                .should()
                .accessField(System.class, "out")
                .because("standard output is the console's answer and nothing else")
                .check(code);
    }

    @Test
    void nobodyTakesADefaultDisplay() {
        noClasses()
                .should()
                .callMethod("org.eclipse.swt.widgets.Display", "getDefault")
                .because("it makes a second display on the wrong thread instead of failing")
                .check(code);
    }

    @Test
    void coloursAndFontsComeFromThePalette() {
        noClasses()
                .that()
                .resideOutsideOfPackages("etamine.widgets..")
                .should()
                .callConstructorWhere(makesResource())
                .because("a fixed colour breaks the dark theme and a fixed font the magnified screen")
                .check(code);
    }

    @Test
    void nobodyUsesTheOldCalendar() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.Date")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.Calendar")
                .because("days, instants and zones are different things")
                .check(code);
    }

    @Test
    void namesSayHowAThingWorks() {
        noClasses()
                .should()
                .haveNameMatching(".*(Impl|Manager|Helper|Util|Utils)")
                .because("such a name says nothing, and collects everything")
                .check(code);
    }

    private static DescribedPredicate<JavaClass> otherModuleThan(String module) {
        Set<String> modules =
                Set.of("ingredients", "recipes", "costing", "catalogue", "inventory", "diary", "ordering", "book");
        return DescribedPredicate.describe(
                "belong to another module than " + module,
                type -> modules.stream()
                        .filter(other -> !other.equals(module))
                        .anyMatch(other -> type.getPackageName().equals("etamine." + other)
                                || type.getPackageName().startsWith("etamine." + other + ".")));
    }

    private static DescribedPredicate<JavaConstructorCall> makesResource() {
        Set<String> resources = Set.of("org.eclipse.swt.graphics.Color", "org.eclipse.swt.graphics.Font");
        return DescribedPredicate.describe(
                "make a colour or a font",
                call -> resources.contains(call.getTargetOwner().getName()));
    }

    private static ArchCondition<JavaClass> haveNoFloatingPointInTheirInterface() {
        return new ArchCondition<>("have no double or float in fields, parameters or results") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                for (JavaField field : type.getFields()) {
                    if (floating(field.getRawType())) {
                        events.add(SimpleConditionEvent.violated(field, field.getFullName()));
                    }
                }
                for (JavaMethod method : type.getMethods()) {
                    boolean any = floating(method.getRawReturnType())
                            || method.getRawParameterTypes().stream().anyMatch(SourceRulesTest::floating);
                    // The one way out, for engines; see the decision on exact numbers.
                    if (any && !method.getFullName().equals("etamine.measures.Ratio.doubleValue()")) {
                        events.add(SimpleConditionEvent.violated(method, method.getFullName()));
                    }
                }
            }
        };
    }

    private static boolean floating(JavaClass type) {
        return Set.of("double", "float", "java.lang.Double", "java.lang.Float").contains(type.getName());
    }
}
