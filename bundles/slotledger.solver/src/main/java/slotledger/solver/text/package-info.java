/** Integer programmes as text that general solvers read. Start with {@code ProgrammeForm}. */
@Export
@Version("1.0.0")
package slotledger.solver.text;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
