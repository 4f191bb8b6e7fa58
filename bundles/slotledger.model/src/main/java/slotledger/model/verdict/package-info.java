/** Whether a population is allowed, how it runs, and why. */
@Export
@Version("1.0.0")
package slotledger.model.verdict;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
