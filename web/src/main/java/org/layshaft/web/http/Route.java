package org.layshaft.web.http;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * One kind of address.
 *
 * @param pattern a path; {@code *} stands for one step of it, or part of one: {@code /drawing/*.svg}
 * @param methods what answers, by method; HEAD is answered as GET is
 */
record Route(String pattern, Map<String, Answering> methods) {
    static final String FORM = "application/x-www-form-urlencoded";
    private static final String GET = "GET";

    /** Nothing is read with GET. */
    private static final int NOTHING_BYTES = 0;

    /** Answers to reading alone. */
    Route(String pattern, Endpoint endpoint) {
        this(pattern, Map.of(GET, new Answering(endpoint, Optional.empty(), NOTHING_BYTES)));
    }

    /** Answers to one method with a body, and to no other. */
    static Route taking(String method, String pattern, String type, int mostBytes, Endpoint endpoint) {
        return new Route(pattern, Map.of()).and(method, type, mostBytes, endpoint);
    }

    /**
     * The same, answering one more method.
     *
     * @param type the content type that its body must have
     * @param mostBytes the longest body that is read
     */
    Route and(String method, String type, int mostBytes, Endpoint endpoint) {
        Map<String, Answering> more = new TreeMap<>(methods);
        more.put(method, new Answering(endpoint, Optional.of(type), mostBytes));
        return new Route(pattern, more);
    }

    /**
     * What answers a method.
     *
     * @param type the content type that the body must have; empty where no body is read
     */
    record Answering(Endpoint endpoint, Optional<String> type, int mostBytes) {}

    Optional<Answering> answering(String method) {
        return Optional.ofNullable(methods.get(method.equals("HEAD") ? GET : method));
    }

    /** As in the header Allow. */
    String allowed() {
        return methods.keySet().stream()
                .sorted()
                .map(method -> method.equals(GET) ? "GET, HEAD" : method)
                .collect(Collectors.joining(", "));
    }

    /** What answers to reading; throws where nothing does. */
    Endpoint endpoint() {
        return methods.get(GET).endpoint();
    }

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
