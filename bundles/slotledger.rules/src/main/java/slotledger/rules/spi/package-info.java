/** The door for one more memory rule: implement {@link slotledger.rules.spi.MemoryRule}, register it as a service. */
@Export
@Version("1.0.0")
package slotledger.rules.spi;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
