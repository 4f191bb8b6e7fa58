/** Every module kind against every slot of a board. */
@Export
@Version("1.0.0")
package slotledger.model.matrix;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
