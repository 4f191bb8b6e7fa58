/** What makes a rule short to write: base classes for rules, and what follows of a module from what is known of it. */
@Export
@Version("1.0.0")
package slotledger.rules.kit;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
