/** What a project is in which every change is kept: its journal, and what follows from it. */
@Export
@Version("1.0.0")
package slotledger.model.project;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
