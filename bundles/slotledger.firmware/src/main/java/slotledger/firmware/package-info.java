/** Reads what machines and modules say of themselves: firmware tables, lists of them, and SPD images. */
@Export
@Version("1.0.0")
package slotledger.firmware;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
