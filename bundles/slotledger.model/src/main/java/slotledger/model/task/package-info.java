/** Progress and cancelling of long work. */
@Export
@Version("1.0.0")
package slotledger.model.task;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
