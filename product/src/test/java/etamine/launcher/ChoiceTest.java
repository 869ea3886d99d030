package etamine.launcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChoiceTest {
    @TempDir
    Path folder;

    @BeforeEach
    void write() throws IOException {
        list("platform", "vital", "bundle scr.jar");
        list("base", "needs platform", "vital", "bundle base.jar");
        list("recipes", "needs base", "bundle recipes.jar");
        list("window", "needs base", "window", "vital", "bundle swt.jar linux x86_64");
        list("recipes-window", "needs recipes", "needs window", "window", "bundle recipes.ui.jar");
        list("suite", "needs recipes", "needs recipes-window");
    }

    @Test
    void startsWhatAFeatureNeedsBeforeIt() throws StartException {
        assertThat(names(true, "recipes-window"))
                .containsExactly("platform", "base", "recipes", "window", "recipes-window");
    }

    @Test
    void leavesOutTheWindowsFeaturesOnTheConsole() throws StartException {
        assertThat(names(false, "suite")).containsExactly("platform", "base", "recipes", "suite");
    }

    @Test
    void takesEachFeatureOnce() throws StartException {
        assertThat(names(false, "recipes", "base", "recipes")).containsExactly("platform", "base", "recipes");
    }

    @Test
    void readsFlagsAndBundles() throws StartException {
        FeatureList window = Choice.of(folder, List.of("window"), true).get(2);
        assertThat(window.vital()).isTrue();
        assertThat(window.bundles()).containsExactly(new BundleFile("swt.jar", "linux", "x86_64"));
    }

    @Test
    void namesTheFeaturesThereAreWhenOneIsUnknown() {
        assertThatThrownBy(() -> names(false, "soup"))
                .isInstanceOf(StartException.class)
                .hasMessage("There is no feature soup. There are: base, platform, recipes, recipes-window, suite,"
                        + " window.");
    }

    @Test
    void refusesFeaturesThatNeedEachOther() throws IOException {
        list("platform", "needs recipes");
        assertThatThrownBy(() -> names(false, "recipes"))
                .isInstanceOf(StartException.class)
                .hasMessageContaining("recipes, base, platform");
    }

    @Test
    void saysWhenTheProgramFolderIsNotComplete() {
        assertThatThrownBy(() -> Choice.of(folder.resolve("none"), List.of("base"), false))
                .isInstanceOf(StartException.class)
                .hasMessageContaining("not complete");
    }

    private List<String> names(boolean window, String... chosen) throws StartException {
        return Choice.of(folder, List.of(chosen), window).stream()
                .map(FeatureList::name)
                .toList();
    }

    private void list(String name, String... lines) throws IOException {
        Files.write(folder.resolve(name + ".list"), List.of(lines));
    }
}
