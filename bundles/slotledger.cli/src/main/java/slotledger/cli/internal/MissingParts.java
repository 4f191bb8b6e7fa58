package slotledger.cli.internal;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;
import org.osgi.service.component.runtime.ServiceComponentRuntime;
import org.osgi.service.component.runtime.dto.ComponentConfigurationDTO;

/** Says why the product isn't complete: which component lacks what. */
final class MissingParts {

    private final BundleContext bundles;

    MissingParts(BundleContext bundles) {
        this.bundles = bundles;
    }

    String describe() {
        return "This installation is not complete, so no command can run." + System.lineSeparator()
                + Stream.concat(unresolved(), unsatisfied()).map(line -> "  " + line + System.lineSeparator())
                        .collect(Collectors.joining());
    }

    private Stream<String> unresolved() {
        return Stream.of(bundles.getBundles()).filter(bundle -> bundle.getState() == Bundle.INSTALLED)
                .map(bundle -> "can't be used: " + bundle.getSymbolicName());
    }

    private Stream<String> unsatisfied() {
        ServiceReference<ServiceComponentRuntime> reference =
                bundles.getServiceReference(ServiceComponentRuntime.class);
        if (reference == null) {
            return Stream.of("the component runtime is missing");
        }
        ServiceComponentRuntime runtime = bundles.getService(reference);
        return runtime.getComponentDescriptionDTOs().stream()
                .flatMap(component -> runtime.getComponentConfigurationDTOs(component).stream())
                .filter(configuration -> configuration.unsatisfiedReferences.length > 0)
                .map(MissingParts::line);
    }

    private static String line(ComponentConfigurationDTO configuration) {
        return configuration.description.name + " lacks " + Stream.of(configuration.unsatisfiedReferences)
                .map(reference -> reference.name).collect(Collectors.joining(", "));
    }
}
