package etamine.launcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.osgi.framework.BundleException;

class FailuresTest {
    private final Failures failures = new Failures();

    @Test
    void keepsAModulesReasonAndGoesOn() {
        failures.add("etamine.recipes", false, new BundleException("activator", new IllegalStateException("no salt")));
        assertThat(failures.modules()).containsEntry("etamine.recipes", "IllegalStateException: no salt");
        assertThatCode(failures::throwIfFatal).doesNotThrowAnyException();
    }

    @Test
    void stopsForTheFirstVitalBundle() {
        failures.add("etamine.base", true, new BundleException("missing package"));
        failures.add("etamine.kitchen", true, new BundleException("because of the first"));
        assertThatThrownBy(failures::throwIfFatal)
                .isInstanceOf(StartException.class)
                .hasMessage("Bundle etamine.base did not start: missing package");
    }
}
