package slotledger.catalog;

import java.util.List;
import java.util.Objects;
import slotledger.model.finding.Finding;

/**
 * A catalog that was read, and what is wrong in its files.
 *
 * @param catalog  the boards that could be read
 * @param findings one for each file or field that could not, with file, line and column
 */
public record CatalogReading(Catalog catalog, List<Finding> findings) {

    public CatalogReading {
        Objects.requireNonNull(catalog, "catalog");
        findings = List.copyOf(findings);
    }
}
