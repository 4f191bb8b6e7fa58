/** What a memory module is, as far as fitting and running are concerned. */
@Export
@Version("1.0.0")
package slotledger.model.module;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
