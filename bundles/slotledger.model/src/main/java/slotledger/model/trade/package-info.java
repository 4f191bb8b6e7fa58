/** What can be had and what it may cost: offers, shelf, policy. */
@Export
@Version("1.0.0")
package slotledger.model.trade;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
