package org.layshaft.web.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Observation;

/** A diagnosis as an address: the layout, and each observation as written. */
record DiagnosisAddress(String layout, List<String> seen) {

    static DiagnosisAddress of(String layout, Evidence evidence) {
        return new DiagnosisAddress(
                layout,
                Stream.concat(
                                evidence.observations().stream().map(Observation::written),
                                evidence.afterWork() ? Stream.of(Evidence.AFTER_WORK) : Stream.of())
                        .toList());
    }

    String link() {
        return "/suspects" + query();
    }

    String api() {
        return "/api/suspects" + query();
    }

    String file() {
        return "/suspects/diagnosis.json" + query();
    }

    private String query() {
        return Stream.concat(
                        Stream.of("layout=" + encoded(layout)), seen.stream().map(each -> "seen=" + encoded(each)))
                .collect(Collectors.joining("&", "?", ""));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
