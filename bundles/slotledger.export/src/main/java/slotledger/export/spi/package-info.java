/** How another exporter joins in. */
@Export
@Version("1.0.0")
package slotledger.export.spi;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
