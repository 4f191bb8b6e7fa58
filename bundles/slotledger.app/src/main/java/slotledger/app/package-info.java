/** Strings the steps together; the only door for command line and workbench. */
@Export
@Version("1.0.0")
package slotledger.app;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
