/** Statements about data: what was seen where, what was expected, what to do. */
@Export
@Version("1.0.0")
package slotledger.model.finding;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
