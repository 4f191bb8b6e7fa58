/** The comparison of an inventory taken after the work with the plan. */
@Export
@Version("1.0.0")
package slotledger.model.proof;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
