/** Makes the solver's native code ready for use. */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package slotledger.lib.solver;
