package org.layshaft.web.asking.understanding;

import java.util.List;

/**
 * A way of failing and the part it is said of.
 *
 * @param parts the parts it may be; several where the words fit several
 */
record FaultClue(Mention mode, Mention part, List<String> parts) {
    int from() {
        return Math.min(mode.from(), part.from());
    }

    int to() {
        return Math.max(mode.to(), part.to());
    }
}
