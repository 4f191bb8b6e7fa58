/** Integer programmes with whole numbers, and the door to what solves them. Start with {@code IntegerProgramme}. */
@Export
@Version("1.0.0")
package slotledger.solver;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
