/** The way from a plan to its end: rounds, jobs, and what technicians say of them. */
@Export
@Version("1.0.0")
package slotledger.model.work;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
