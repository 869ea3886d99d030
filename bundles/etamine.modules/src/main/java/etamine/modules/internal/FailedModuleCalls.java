package etamine.modules.internal;

import etamine.base.Subject;
import etamine.kitchen.today.Call;
import etamine.kitchen.today.CallSource;
import etamine.modules.InstalledModule;
import etamine.modules.ModuleList;
import etamine.modules.ModuleState;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Names every module that did not start on the pass. */
@Component
public final class FailedModuleCalls implements CallSource {
    private final ModuleList modules;

    /** Calls about these modules. */
    @Activate
    public FailedModuleCalls(@Reference ModuleList modules) {
        this.modules = modules;
    }

    @Override
    public List<Call> calls(Instant now) {
        return modules.modules().stream()
                .filter(module -> module.state() == ModuleState.FAILED)
                .map(FailedModuleCalls::call)
                .toList();
    }

    private static Call call(InstalledModule module) {
        return new Call(
                "module-failed/" + module.id(),
                Call.Urgency.TODAY,
                "Module " + module.id() + " did not start: " + module.failure().orElse("it gave no reason"),
                Optional.empty(),
                new Subject("module", module.id()));
    }
}
