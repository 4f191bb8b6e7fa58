/** Turns spreadsheets and text files into an observed fleet, offers, a shelf and a policy, plus findings. */
@Export
@Version("1.1.0")
package slotledger.intake;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
