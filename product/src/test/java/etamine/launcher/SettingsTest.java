package etamine.launcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SettingsTest {

    @Test
    void takesTheModeFirstAndPassesTheRestOn() throws StartException {
        Settings settings = Settings.of(new String[] {"console", "--book", "kitchen one.etamine", "cost", "--json"});
        assertThat(settings.window()).isFalse();
        assertThat(settings.arguments()).containsExactly("--book", "kitchen one.etamine", "cost", "--json");
        assertThat(settings.features()).containsExactly("suite");
        assertThat(settings.properties())
                .containsEntry("etamine.book", "kitchen one.etamine")
                .containsEntry("etamine.folder", System.getProperty("user.dir"));
    }

    @Test
    void readsTheBookAfterAnEqualsSign() throws StartException {
        assertThat(Settings.of(new String[] {"window", "--book=a.etamine"}).properties())
                .containsEntry("etamine.book", "a.etamine");
    }

    @Test
    void fallsBackOnAPlaceForTheBook() throws StartException {
        assertThat(Settings.of(new String[] {"window"}).properties().get("etamine.book"))
                .isNotBlank();
        assertThat(Settings.of(new String[] {"console", "cost", "--book"})
                        .properties()
                        .get("etamine.book"))
                .isNotEqualTo("--book");
    }

    @Test
    void refusesAnythingButWindowAndConsole() {
        assertThatThrownBy(() -> Settings.of(new String[] {"soup"})).isInstanceOf(StartException.class);
        assertThatThrownBy(() -> Settings.of(new String[] {})).isInstanceOf(StartException.class);
    }
}
