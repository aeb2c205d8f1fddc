package org.layshaft.web.json;

import java.util.List;
import org.layshaft.kb.pack.Reading;

/**
 * What {@code check} found.
 *
 * @param sound whether everything can be loaded
 */
public record FindingsJson(boolean sound, List<FindingJson> findings) {

    /**
     * One finding.
     *
     * @param grade {@code broken} or {@code doubtful}
     * @param line from 1; 0 where there is none
     */
    public record FindingJson(
            String grade, String file, String pointer, int line, String what, String value, String advice) {}

    public static FindingsJson of(Reading reading) {
        return new FindingsJson(
                reading.isSound(),
                reading.findings().stream()
                        .map(finding -> new FindingJson(
                                Spelling.of(finding.grade()),
                                finding.file(),
                                finding.pointer(),
                                finding.line(),
                                finding.what(),
                                finding.value(),
                                finding.advice()))
                        .toList());
    }
}
