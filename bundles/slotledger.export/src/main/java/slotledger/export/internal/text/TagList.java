package slotledger.export.internal.text;

import java.util.List;
import java.util.stream.Collectors;
import slotledger.model.machine.AssetTag;

/** Asset tags that are shown in one cell: the first ones by name, the others by number. */
public final class TagList {

    private static final int SHOWN = 8;

    private TagList() {
    }

    /** "H-1, H-2 and 3 more". */
    public static String text(List<AssetTag> tags) {
        String shown = tags.stream().limit(SHOWN).map(AssetTag::value).collect(Collectors.joining(", "));
        return tags.size() > SHOWN ? shown + " and " + (tags.size() - SHOWN) + " more" : shown;
    }
}
