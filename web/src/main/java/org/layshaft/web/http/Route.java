package org.layshaft.web.http;

import java.util.Optional;

/**
 * One kind of address.
 *
 * @param pattern a path; {@code *} stands for one step of it, or part of one: {@code /drawing/*.svg}
 */
record Route(String pattern, Endpoint endpoint) {

    /** To whom a reply speaks. */
    enum Face {
        /** To a person, in HTML. */
        PAGE,
        /** To a program, in JSON. */
        API;

        static Face of(String path) {
            return path.equals("/api") || path.startsWith("/api/") ? API : PAGE;
        }
    }

    /** Answers a call. */
    interface Endpoint {
        Reply answer(Call call);
    }

    /** What stands in the path for the star, which is empty where the pattern has none; nothing where it does not match. */
    Optional<String> match(String path) {
        int star = pattern.indexOf('*');
        if (star < 0) {
            return path.equals(pattern) ? Optional.of("") : Optional.empty();
        }
        String before = pattern.substring(0, star);
        String after = pattern.substring(star + 1);
        if (path.length() <= before.length() + after.length() || !path.startsWith(before) || !path.endsWith(after)) {
            return Optional.empty();
        }
        return Optional.of(path.substring(before.length(), path.length() - after.length()))
                .filter(rest -> !rest.contains("/"));
    }
}
