package slotledger.itest.product;

import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** The only class of the drop-in that a test puts together: says that it is active, and as what. */
public final class Greeter implements BundleActivator {

    @Override
    public void start(BundleContext context) {
        System.out.println(context.getBundle().getHeaders("").get("Bundle-Name") + " is active");
    }

    @Override
    public void stop(BundleContext context) {
        // Nothing was begun.
    }
}
