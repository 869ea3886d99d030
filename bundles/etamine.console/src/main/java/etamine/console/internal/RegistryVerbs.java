package etamine.console.internal;

import etamine.base.verb.Verb;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.osgi.framework.BundleContext;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;

/**
 * Finds verbs in the service registry. Asking a service for its usage wakes its whole module, so the likely one is
 * asked first and no other is woken once the verb is found.
 */
final class RegistryVerbs implements Verbs {
    private final BundleContext context;

    RegistryVerbs(BundleContext context) {
        this.context = context;
    }

    @Override
    public Optional<Verb> find(String name) {
        return references()
                .sorted(Comparator.comparing(reference -> !component(reference).contains(name)))
                .map(context::getService)
                .filter(Objects::nonNull)
                .filter(verb -> verb.usage().name().equals(name))
                .findFirst();
    }

    @Override
    public List<Verb> all() {
        return references()
                .map(context::getService)
                .filter(Objects::nonNull)
                .sorted(Comparator.comparing(verb -> verb.usage().name()))
                .toList();
    }

    private Stream<ServiceReference<Verb>> references() {
        try {
            return context.getServiceReferences(Verb.class, null).stream();
        } catch (InvalidSyntaxException e) {
            throw new IllegalStateException(e); // there is no filter that could be wrong
        }
    }

    private static String component(ServiceReference<Verb> reference) {
        return String.valueOf(reference.getProperty("component.name")).toLowerCase(Locale.ROOT);
    }
}
