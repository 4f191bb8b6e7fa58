package slotledger.catalog;

import java.nio.file.Path;
import java.util.List;

/** Reads board files. */
public interface CatalogReader {

    /**
     * Reads every board file of the folders, later folders overriding boards of the same id in earlier ones with a
     * finding that says so.
     *
     * @throws CatalogException where a folder can't be read at all
     */
    CatalogReading read(List<Path> folders) throws CatalogException;
}
