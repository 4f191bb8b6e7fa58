/** Tables of a machine's firmware after DMTF DSP0134, versions 2.1 to 3.9. */
@Export
@Version("1.0.0")
package slotledger.firmware.smbios;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
