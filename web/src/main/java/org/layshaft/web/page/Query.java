package org.layshaft.web.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** The part of an address after its path: {@code ?set=SM-4103&box=curlew}. */
final class Query {
    private final List<String> pairs = new ArrayList<>();

    Query with(String name, String value) {
        pairs.add(name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8));
        return this;
    }

    Query with(String name, Optional<String> value) {
        value.ifPresent(each -> with(name, each));
        return this;
    }

    Query with(String name, Collection<String> values) {
        values.forEach(each -> with(name, each));
        return this;
    }

    /** Empty where there is nothing in it. */
    @Override
    public String toString() {
        return pairs.isEmpty() ? "" : "?" + String.join("&", pairs);
    }
}
