/** A system model's memory side: slots, channels, what they take, limits and fill order. */
@Export
@Version("1.0.0")
package slotledger.model.board;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
