package etamine.modules.internal;

import etamine.base.verb.Outcome;
import etamine.base.verb.Report;
import etamine.base.verb.TextTable;
import etamine.base.verb.Verb;
import etamine.base.verb.VerbCall;
import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.modules.InstalledModule;
import etamine.modules.ModuleException;
import etamine.modules.ModuleList;
import etamine.modules.ModuleState;
import etamine.modules.Need;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** {@code modules [list|install FILE|start ID|stop ID|remove ID]}. */
@Component
public final class ModulesVerb implements Verb {
    private static final VerbUsage USAGE = VerbUsage.of(
                    "modules", "list the modules; start or stop one", "[list|install|start|stop|remove]", "[ID|FILE]")
            .withoutBook();

    private final ModuleList modules;

    /** A verb over these modules. */
    @Activate
    public ModulesVerb(@Reference ModuleList modules) {
        this.modules = modules;
    }

    @Override
    public VerbUsage usage() {
        return USAGE;
    }

    @Override
    public Report run(VerbCall call) throws VerbException {
        String action = call.arguments().isEmpty() ? "list" : call.arguments().get(0);
        try {
            switch (action) {
                case "list" -> refuseMore(call);
                case "start" -> modules.start(id(call));
                case "stop" -> modules.stop(id(call));
                case "install", "remove" -> throw later(action);
                default ->
                    throw VerbException.wrongCall("There is no 'modules " + action
                            + "'. Use list, start or stop; install and remove come with a later version.");
            }
        } catch (ModuleException e) {
            throw VerbException.wrongCall(e.getMessage());
        }
        return report(modules.modules());
    }

    private static VerbException later(String action) {
        return VerbException.wrongCall("A later version brings 'modules " + action + "'. Until then put a module's"
                + " jar into the program's modules folder, or take it out, and start again.");
    }

    private static void refuseMore(VerbCall call) throws VerbException {
        if (call.arguments().size() > 1) {
            throw VerbException.wrongCall("'modules list' takes nothing more.");
        }
    }

    private static String id(VerbCall call) throws VerbException {
        if (call.arguments().size() != 2) {
            throw VerbException.wrongCall(
                    "Name one module, as in 'modules " + call.arguments().get(0) + " recipes'.");
        }
        return call.arguments().get(1);
    }

    private static Report report(List<InstalledModule> modules) {
        TextTable table = new TextTable("Module", "Version", "State", "Remark");
        modules.forEach(each -> table.row(each.id(), each.version(), word(each.state()), remark(each)));
        boolean failed = modules.stream().anyMatch(each -> each.state() == ModuleState.FAILED);
        return new Report(
                failed ? Outcome.LOOK : Outcome.DONE,
                Map.of("modules", modules.stream().map(ModulesVerb::json).toList()),
                table.lines());
    }

    private static Map<String, Object> json(InstalledModule module) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", module.id());
        json.put("version", module.version());
        json.put("state", word(module.state()));
        json.put("needs", names(module.needs()));
        json.put("missing", names(module.missing()));
        module.failure().ifPresent(reason -> json.put("failure", reason));
        return json;
    }

    private static List<String> names(List<Need> needs) {
        return needs.stream().map(Need::name).toList();
    }

    private static String word(ModuleState state) {
        return state.name().toLowerCase(Locale.ROOT);
    }

    private static String remark(InstalledModule module) {
        return switch (module.state()) {
            case FAILED -> module.failure().orElse("");
            case WAITING ->
                "waits for " + module.missing().stream().map(Need::name).collect(Collectors.joining(", "));
            default -> "";
        };
    }
}
