package etamine.modules.ui.internal;

import static org.assertj.core.api.Assertions.assertThat;

import etamine.modules.InstalledModule;
import etamine.modules.ModuleState;
import etamine.modules.Need;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ModuleRowTest {

    @Test
    void saysWhyAModuleCouldNotStart() {
        ModuleRow row = row(ModuleState.FAILED, Optional.of("its file is damaged"), false);
        assertThat(row.remark()).isEqualTo("its file is damaged");
        assertThat(row.canStart()).isTrue();
    }

    @Test
    void namesWhatAWaitingModuleLacks() {
        assertThat(row(ModuleState.WAITING, Optional.empty(), false).remark()).isEqualTo("lacks a.Service");
    }

    @Test
    void offersNoStopForWhatEverythingNeeds() {
        assertThat(row(ModuleState.RUNNING, Optional.empty(), true).canStop()).isFalse();
        assertThat(row(ModuleState.RUNNING, Optional.empty(), false).canStop()).isTrue();
        assertThat(row(ModuleState.STOPPED, Optional.empty(), false).canStop()).isFalse();
    }

    private static ModuleRow row(ModuleState state, Optional<String> failure, boolean vital) {
        List<Need> needs = List.of(
                new Need(Need.Kind.BUNDLE, "etamine.base", true), new Need(Need.Kind.SERVICE, "a.Service", false));
        return new ModuleRow(new InstalledModule("etamine.x", "Etamine: x", "1.0", state, needs, failure, vital));
    }
}
