package slotledger.workbench.internal;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ImageRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.Image;

/** Our icons, drawn as SVG so that they are sharp at any zoom. */
public final class Icons {

    public static final String ERROR = "error";
    public static final String WARNING = "warning";
    public static final String NOTE = "note";

    private Icons() {
    }

    /** An icon of the window's display; never disposed by the caller. */
    public static Image get(String name) {
        ImageRegistry registry = JFaceResources.getImageRegistry();
        String key = Icons.class.getName() + '/' + name;
        if (registry.getDescriptor(key) == null) {
            registry.put(key, ImageDescriptor.createFromURL(Icons.class.getResource("/icons/" + name + ".svg")));
        }
        return registry.get(key);
    }
}
