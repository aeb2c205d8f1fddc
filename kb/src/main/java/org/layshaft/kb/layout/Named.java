package org.layshaft.kb.layout;

import java.util.List;

/**
 * What a part is called.
 *
 * @param id unique within its layout, as typed: {@code 3-4-fork}
 * @param name the plain trade name: {@code 3-4 fork}
 * @param also other names that the layout gives this one part
 */
public record Named(String id, String name, List<String> also) {
    public Named {
        also = List.copyOf(also);
    }
}
