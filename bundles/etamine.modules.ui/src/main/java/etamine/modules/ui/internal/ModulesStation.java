package etamine.modules.ui.internal;

import etamine.modules.ModuleList;
import etamine.shell.Bench;
import etamine.shell.Frame;
import etamine.shell.Station;
import java.util.Set;
import org.eclipse.swt.widgets.Composite;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Where modules are started and stopped; it is there without a book too. */
@Component
public final class ModulesStation implements Station {
    private final ModuleList modules;

    /** The station of the running program. */
    @Activate
    public ModulesStation(@Reference ModuleList modules) {
        this.modules = modules;
    }

    @Override
    public String id() {
        return "modules";
    }

    @Override
    public String name() {
        return "Modules";
    }

    @Override
    public String icon() {
        return "modules";
    }

    @Override
    public int order() {
        return 950;
    }

    @Override
    public Set<String> shows() {
        return Set.of("module");
    }

    @Override
    public Bench open(Composite parent, Frame frame) {
        return new ModulesBench(parent, frame, modules);
    }
}
