/** What is to be done to each machine, what to buy, what is left over. */
@Export
@Version("1.0.0")
package slotledger.model.plan;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
