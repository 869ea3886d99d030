package etamine.checks.product;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The whole program with its window open while modules come and go. The toolkit's native part goes into one class loader
 * of a process and no more, so that every check of the open window stands here.
 */
class WindowModulesTest {
    private static final String GONE = "This station is gone";

    @TempDir
    static Path folder;

    private static Suite suite;
    private static ScreenView view;
    private static Thread window;
    private static final AtomicReference<Object> ENDED = new AtomicReference<>("still open");

    @BeforeAll
    static void openTheWindow() throws Exception {
        assertThat(System.getenv("DISPLAY"))
                .as("the window needs a display: run the tests with product/test, which opens a virtual one")
                .isNotBlank();
        layOutABook();
        suite = new Suite(
                Suite.APP,
                folder,
                List.of("suite"),
                Map.of("etamine.book", folder.resolve("book").toString()),
                "window");
        window = new Thread(WindowModulesTest::run, "window");
        window.start();
        view = ScreenView.of(suite, window);
        ScreenView.await("the stations of all modules", () -> view.stations().size() >= 9);
    }

    private static void layOutABook() throws Exception {
        try (InputStream hook = Objects.requireNonNull(WindowModulesTest.class.getResourceAsStream("hook.json"))) {
            Files.copy(hook, folder.resolve("hook.json"));
        }
        List<String> all = List.of("base", "recipes", "costing", "catalogue", "inventory", "diary", "ordering");
        try (Suite maker = new Suite(folder, all)) {
            assertThat(new ConsoleFront(maker, folder).say("load", "hook.json").status())
                    .isZero();
        }
    }

    private static void run() {
        try {
            ENDED.set(suite.call());
        } catch (Exception e) {
            ENDED.set(e);
        }
    }

    @AfterAll
    static void closeTheWindow() throws Exception {
        if (view != null) {
            view.close();
            window.join(20_000);
            assertThat(ENDED.get()).as("what the window ended with").isEqualTo(0);
        }
        if (suite != null) {
            suite.close();
        }
    }

    @Test
    void everyComponentIsSatisfied() throws Exception {
        assertThat(suite.failed()).isEmpty();
        assertThat(suite.unsatisfied()).isEmpty();
        assertThat(view.stations())
                .contains(
                        "pass",
                        "ingredients",
                        "recipes",
                        "costing",
                        "suppliers",
                        "stock",
                        "diary",
                        "ordering",
                        "modules");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "etamine.ingredients.ui, ingredients",
        "etamine.recipes.ui, recipes",
        "etamine.recipes, recipes",
        "etamine.costing.ui, costing",
        "etamine.costing, costing",
        "etamine.catalogue.ui, suppliers",
        "etamine.catalogue, suppliers",
        "etamine.inventory.ui, stock",
        "etamine.inventory, stock",
        "etamine.diary.ui, diary",
        "etamine.diary, diary",
        "etamine.ordering.ui, ordering",
        "etamine.ordering, ordering",
        "etamine.modules.ui, modules"
    })
    void anOpenBenchGivesWayToANoteAndComesBack(String bundle, String station) throws Exception {
        view.pick(station);
        String title = view.title();
        assertThat(title).isNotBlank();
        assertThat(view.texts()).doesNotContain(GONE).noneMatch(text -> text.contains("failed"));
        suite.bundle(bundle).stop();
        ScreenView.await("the note", () -> view.texts().contains(GONE));
        assertThat(view.stations()).doesNotContain(station).contains("pass");
        suite.bundle(bundle).start();
        ScreenView.await(
                "the bench", () -> !view.texts().contains(GONE) && view.title().equals(title));
        assertThat(view.stations()).contains(station);
        assertThat(suite.unsatisfied()).isEmpty();
    }
}
