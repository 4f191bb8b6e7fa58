/** What a spreadsheet or a firmware table says of a fleet, before boards are known. */
@Export
@Version("1.1.0")
package slotledger.model.observed;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
