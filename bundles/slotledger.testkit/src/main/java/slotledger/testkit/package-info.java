/** What the tests of several bundles share. Never part of a product. */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package slotledger.testkit;
