package org.layshaft.web.cli;

import org.layshaft.kb.finding.Finding;

/** A finding as one line: {@code file:line pointer — what (value). advice}. */
final class FindingText {
    private FindingText() {}

    static String of(Finding finding) {
        String place = finding.file()
                + (finding.line() > 0 ? ":" + finding.line() : "")
                + (finding.pointer().isEmpty() ? "" : " " + finding.pointer());
        String value = finding.value().isEmpty() ? "" : " (%s)".formatted(finding.value());
        return "%s — %s%s. %s".formatted(place, withoutStop(finding.what()), value, finding.advice());
    }

    private static String withoutStop(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }
}
