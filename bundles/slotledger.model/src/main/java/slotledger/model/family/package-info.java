/** The families of memory: which numbers go with a generation and a form, and who says so. */
@Export
@Version("1.0.0")
package slotledger.model.family;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
