/** One computer, what is in its slots, and the fleet of all of them. */
@Export
@Version("1.0.0")
package slotledger.model.machine;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
