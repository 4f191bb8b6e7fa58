/** Where readers of more kinds of files plug in. */
@Export
@Version("1.1.0")
package slotledger.intake.spi;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
