/** Answers which board this is, what it takes, and who says so. */
@Export
@Version("1.0.0")
package slotledger.catalog;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
