package org.layshaft.web.page;

import java.util.stream.Collectors;

/**
 * Where the same answer can be had.
 *
 * @param command on the command line
 * @param apiHref as JSON
 */
record ElsewhereView(String command, String apiHref) {
    private static final String JAR = "java -jar web/target/layshaft.jar ";

    static ElsewhereView of(Scene scene) {
        Address address = scene.address();
        String layout = scene.layout().id();
        String start = address.question()
                .map(question -> "ask --layout " + layout + " " + quoted(question))
                .orElse("gears " + layout);
        String faults = address.faults().stream()
                .map(fault -> " --fault " + quoted(fault))
                .collect(Collectors.joining());
        return new ElsewhereView(JAR + start + faults, address.api());
    }

    /** So that a shell takes it as one word, whatever stands in it. */
    private static String quoted(String text) {
        return text.matches("[\\w .,;:?=/-]*") ? '"' + text + '"' : "'" + text.replace("'", "'\\''") + "'";
    }
}
