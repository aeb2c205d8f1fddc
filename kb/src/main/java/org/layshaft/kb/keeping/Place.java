package org.layshaft.kb.keeping;

/**
 * Where a layout is kept. Throws {@link ShelfException} where a name cannot be one.
 *
 * @param pack name of its pack, and of the pack's folder
 * @param layout its id, and the name of its file
 * @param draft whether it is kept beside the layouts, and not loaded
 */
public record Place(String pack, String layout, boolean draft) {
    public Place {
        Names.require("pack", pack);
        Names.require("layout", layout);
    }

    /** Whether a pack or a layout can be kept under this name. */
    public static boolean isName(String name) {
        return Names.isName(name);
    }

    public Place asDraft() {
        return new Place(pack, layout, true);
    }

    public Place asLayout() {
        return new Place(pack, layout, false);
    }

    String fileName() {
        return layout + (draft ? Shelf.DRAFT : Shelf.LAYOUT);
    }
}
