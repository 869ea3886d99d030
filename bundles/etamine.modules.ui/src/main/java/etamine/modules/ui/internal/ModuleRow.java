package etamine.modules.ui.internal;

import etamine.base.Explanation;
import etamine.modules.InstalledModule;
import etamine.modules.ModuleState;
import etamine.modules.Need;
import etamine.widgets.Tone;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One module as the table shows it.
 *
 * @param module the module
 */
record ModuleRow(InstalledModule module) {

    String id() {
        return module.id();
    }

    String name() {
        return module.title().replaceFirst("^Etamine: ", "");
    }

    String state() {
        return switch (module.state()) {
            case RUNNING -> "runs";
            case STOPPED -> "stopped";
            case WAITING -> "waits for something it needs";
            case FAILED -> "could not start";
        };
    }

    String icon() {
        return switch (module.state()) {
            case RUNNING -> "good";
            case STOPPED -> "stop";
            case WAITING, FAILED -> "warning";
        };
    }

    Tone tone() {
        return switch (module.state()) {
            case RUNNING -> Tone.PLAIN;
            case STOPPED -> Tone.QUIET;
            case WAITING -> Tone.WARN;
            case FAILED -> Tone.BAD;
        };
    }

    /** Why it does not work, or that the program needs it, in a few words. */
    String remark() {
        if (module.failure().isPresent()) {
            return module.failure().get();
        }
        if (module.state() == ModuleState.WAITING && !module.missing().isEmpty()) {
            return "lacks " + module.missing().stream().map(Need::name).collect(Collectors.joining(", "));
        }
        return module.vital() ? "the others need it" : "";
    }

    boolean canStart() {
        return module.state() == ModuleState.STOPPED || module.state() == ModuleState.FAILED;
    }

    boolean canStop() {
        return !module.vital() && module.state() != ModuleState.STOPPED;
    }

    /** The version without the mark of a build between two releases. */
    String version() {
        return module.version().replaceFirst("[.-]SNAPSHOT$", "");
    }

    Explanation story() {
        List<Explanation> needs = module.needs().stream()
                .map(need -> Explanation.leaf(
                        need.name(),
                        need.met() ? "there" : "missing",
                        need.kind().name().toLowerCase(Locale.ROOT)))
                .toList();
        return new Explanation(module.id(), version(), "what it needs", needs, Optional.empty());
    }
}
