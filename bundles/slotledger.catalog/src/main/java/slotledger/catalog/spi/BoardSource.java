package slotledger.catalog.spi;

import java.io.IOException;
import java.util.List;

/**
 * Offers board files. Every service of this type is asked when a catalog is read, in the order of its service ranking,
 * before the folders of a project; a later board replaces an earlier one of the same id.
 */
public interface BoardSource {

    /**
     * All files, read anew at each call.
     *
     * @throws IOException where they can't be read; the catalog goes on without them and says so
     */
    List<BoardFile> files() throws IOException;
}
