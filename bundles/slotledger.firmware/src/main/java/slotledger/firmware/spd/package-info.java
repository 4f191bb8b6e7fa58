/** What the serial presence detect memory of a module says, SDR to DDR5. */
@Export
@Version("1.0.0")
package slotledger.firmware.spd;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
