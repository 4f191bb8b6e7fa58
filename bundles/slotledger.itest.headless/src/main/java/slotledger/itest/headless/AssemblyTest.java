package slotledger.itest.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.Constants;
import org.osgi.framework.FrameworkUtil;
import org.osgi.service.component.runtime.ServiceComponentRuntime;

class AssemblyTest {

    private static final Set<String> OURS = Set.of("slotledger.model", "slotledger.rules", "slotledger.simm",
            "slotledger.catalog", "slotledger.firmware", "slotledger.intake", "slotledger.solver", "slotledger.ojalgo",
            "slotledger.ortools", "slotledger.planner", "slotledger.export", "slotledger.store", "slotledger.app",
            "slotledger.serve",
            "slotledger.cli", "slotledger.dropins", "slotledger.lib.flyway", "slotledger.lib.pdf", "slotledger.lib.poi",
            "slotledger.lib.ojalgo", "slotledger.lib.solver", "slotledger.lib.solver.native");

    private final BundleContext context = FrameworkUtil.getBundle(AssemblyTest.class).getBundleContext();

    @Test
    void everyBundleOfOursIsThere() {
        Set<String> missing = new TreeSet<>(OURS);
        bundles().map(Bundle::getSymbolicName).forEach(missing::remove);
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyBundleIsResolvedAndStarted() {
        List<String> asleep = bundles().filter(bundle -> !isRunning(bundle)).map(Bundle::getSymbolicName).toList();
        assertEquals(List.of(), asleep);
    }

    @Test
    void everyComponentOfOursHasAllItNeeds() {
        ServiceComponentRuntime runtime =
                context.getService(context.getServiceReference(ServiceComponentRuntime.class));
        List<String> described = runtime.getComponentDescriptionDTOs().stream().map(component -> component.name)
                .filter(name -> name.startsWith("slotledger.")).toList();
        List<String> lacking = runtime.getComponentDescriptionDTOs().stream()
                .flatMap(component -> runtime.getComponentConfigurationDTOs(component).stream())
                .filter(configuration -> configuration.unsatisfiedReferences.length > 0)
                .map(configuration -> configuration.description.name + " lacks "
                        + Stream.of(configuration.unsatisfiedReferences).map(reference -> reference.name)
                                .collect(Collectors.joining(", ")))
                .toList();
        assertFalse(described.isEmpty(), "No component was found at all");
        assertEquals(List.of(), lacking);
    }

    private Stream<Bundle> bundles() {
        return Stream.of(context.getBundles());
    }

    /** A lazy bundle is starting until its first class is used; a fragment never starts. */
    private static boolean isRunning(Bundle bundle) {
        if (bundle.getHeaders("").get(Constants.FRAGMENT_HOST) != null) {
            return bundle.getState() == Bundle.RESOLVED;
        }
        boolean lazy = Constants.ACTIVATION_LAZY.equals(bundle.getHeaders("").get(Constants.BUNDLE_ACTIVATIONPOLICY));
        return bundle.getState() == Bundle.ACTIVE || lazy && bundle.getState() == Bundle.STARTING;
    }
}
