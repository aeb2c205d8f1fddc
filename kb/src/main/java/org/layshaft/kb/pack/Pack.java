package org.layshaft.kb.pack;

import java.util.List;

/**
 * A pack that has been read.
 *
 * @param from the folder or jar it came from
 * @param layouts ids of the layouts it brings
 */
public record Pack(String id, String version, String title, String from, List<String> layouts) {
    public Pack {
        layouts = List.copyOf(layouts);
    }
}
