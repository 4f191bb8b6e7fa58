/** Keeps projects between runs and people: every change an entry, every file byte for byte. */
@Export
@Version("1.0.0")
package slotledger.store;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
