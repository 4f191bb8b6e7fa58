/** Where a fact comes from, and how sure it is. */
@Export
@Version("1.0.0")
package slotledger.model.source;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
