/** Writes a plan as an order workbook, job sheets, pick lists and proofs. */
@Export
@Version("1.0.0")
package slotledger.export;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
