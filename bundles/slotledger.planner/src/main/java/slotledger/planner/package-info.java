/** Chooses the best allowed changes for a whole fleet, and proves how good they are. */
@Export
@Version("1.0.0")
package slotledger.planner;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
