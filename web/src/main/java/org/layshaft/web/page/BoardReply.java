package org.layshaft.web.page;

import java.util.Optional;

/**
 * What the drawing board answers.
 *
 * @param status as in HTTP
 * @param html empty where it is to be found at another address
 */
public record BoardReply(int status, String html, Optional<String> movedTo) {
    static BoardReply page(int status, String html) {
        return new BoardReply(status, html, Optional.empty());
    }

    static BoardReply to(String address) {
        return new BoardReply(303, "", Optional.of(address));
    }
}
