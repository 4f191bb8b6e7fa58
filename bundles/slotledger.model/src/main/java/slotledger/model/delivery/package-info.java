/** What arrived of an order, and what can be done with it. */
@Export
@Version("1.0.0")
package slotledger.model.delivery;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
