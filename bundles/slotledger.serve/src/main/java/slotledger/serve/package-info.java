/** Shows rounds and job sheets to phones on the local network, and writes down what technicians say. */
@Export
@Version("1.0.0")
package slotledger.serve;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
