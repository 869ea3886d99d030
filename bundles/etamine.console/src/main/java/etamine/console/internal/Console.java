package etamine.console.internal;

import etamine.storage.BookSession;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.osgi.framework.BundleContext;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;
import org.osgi.framework.Version;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** What the launcher gives the main thread to when the program is started as a console. */
@Component(service = Callable.class, property = "launcher.main=console")
public final class Console implements Callable<Integer> {
    private static final String USUAL_BOOK = "kitchen.etamine";

    private final BundleContext context;
    private final BookSession session;

    /** A console on that session. */
    @Activate
    public Console(BundleContext context, @Reference BookSession session) {
        this.context = context;
        this.session = session;
    }

    /** Holds one conversation. Anything a library prints goes to standard error, so that it cannot spoil JSON. */
    @Override
    public Integer call() {
        PrintStream out = stream(FileDescriptor.out);
        PrintStream err = stream(FileDescriptor.err);
        System.setOut(err);
        try {
            return new Conversation(new RegistryVerbs(context), session, surroundings(), new Printer(out, err))
                    .hold(arguments());
        } finally {
            session.close();
            out.flush();
            err.flush();
        }
    }

    private static PrintStream stream(FileDescriptor descriptor) {
        return new PrintStream(
                new BufferedOutputStream(new FileOutputStream(descriptor), 1 << 16), false, StandardCharsets.UTF_8);
    }

    private Surroundings surroundings() {
        Path folder = Path.of(property("etamine.folder").orElseGet(() -> System.getProperty("user.dir")));
        String usual = property("etamine.book")
                .or(() -> Optional.ofNullable(System.getenv("ETAMINE_BOOK")))
                .filter(place -> !place.isBlank())
                .orElse(USUAL_BOOK);
        return new Surroundings(
                folder.toAbsolutePath(), usual, version(), failures(), System.getenv("ETAMINE_DEBUG") != null);
    }

    private String version() {
        Version version = context.getBundle().getVersion();
        return version.getMajor() + "." + version.getMinor() + "." + version.getMicro();
    }

    private Optional<String> property(String name) {
        return Optional.ofNullable(context.getProperty(name));
    }

    private List<String> arguments() {
        return launcher(List.class, "(launcher.arguments=true)")
                .map(list -> ((List<?>) list).stream().map(String::valueOf).toList())
                .orElse(List.of());
    }

    private Map<String, String> failures() {
        Map<String, String> failures = new LinkedHashMap<>();
        launcher(Map.class, "(launcher.failures=true)")
                .ifPresent(map -> ((Map<?, ?>) map)
                        .forEach((module, reason) -> failures.put(String.valueOf(module), String.valueOf(reason))));
        return failures;
    }

    private <T> Optional<T> launcher(Class<T> type, String filter) {
        try {
            Collection<ServiceReference<T>> found = context.getServiceReferences(type, filter);
            return found.stream().findFirst().map(context::getService);
        } catch (InvalidSyntaxException e) {
            throw new IllegalStateException(e); // the filters stand above and are sound
        }
    }
}
