/** Where boards come from beside a project's own folder. */
@Export
@Version("1.0.0")
package slotledger.catalog.spi;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
