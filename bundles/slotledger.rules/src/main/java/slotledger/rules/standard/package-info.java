/** The rules that come with Slotledger, for use without a service registry. */
@Export
@Version("1.0.0")
package slotledger.rules.standard;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
