/** What is different between two plans, and the words for it. */
@Export
@Version("1.0.0")
package slotledger.model.difference;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
