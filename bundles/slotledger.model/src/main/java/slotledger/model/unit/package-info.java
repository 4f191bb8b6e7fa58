/** Quantities with their units: capacity, transfer rate, bandwidth, voltage, money. */
@Export
@Version("1.0.0")
package slotledger.model.unit;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
