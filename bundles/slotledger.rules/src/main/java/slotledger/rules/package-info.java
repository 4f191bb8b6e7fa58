/** Decides whether a population is allowed on a board, in which mode and at which rate it runs, and why. */
@Export
@Version("1.0.0")
package slotledger.rules;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
