/** What every record of firmware consists of: facts with raw and decoded value, and problems. */
@Export
@Version("1.0.0")
package slotledger.firmware.fact;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
