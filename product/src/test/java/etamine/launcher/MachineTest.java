package etamine.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MachineTest {

    @ParameterizedTest
    @CsvSource(textBlock = """
                    Linux,      amd64,   linux,   x86_64
                    Linux,      aarch64, linux,   aarch64
                    Windows 11, amd64,   windows, x86_64
                    Mac OS X,   x86_64,  macos,   x86_64
                    Mac OS X,   aarch64, macos,   aarch64
                    """)
    void knowsTheMachineByJavasNames(String osName, String osArch, String os, String arch) {
        assertThat(Machine.of(osName, osArch)).isEqualTo(new Machine(os, arch));
    }

    @Test
    void takesOnlyTheToolkitOfTheMachine() {
        Machine machine = new Machine("linux", "x86_64");
        assertThat(BundleFile.parse("swt.jar linux x86_64").fits(machine)).isTrue();
        assertThat(BundleFile.parse("swt.jar linux aarch64").fits(machine)).isFalse();
        assertThat(BundleFile.parse("swt.jar windows x86_64").fits(machine)).isFalse();
        assertThat(BundleFile.parse("base.jar").fits(machine)).isTrue();
    }
}
