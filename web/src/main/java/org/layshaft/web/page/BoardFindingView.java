package org.layshaft.web.page;

import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.finding.Finding.Grade;

/**
 * What is found at the drawing board.
 *
 * @param grade in a word
 * @param place the line, or the file and the line
 * @param value null where there is none
 */
record BoardFindingView(
        boolean broken, String grade, String place, int line, String what, String value, String advice) {

    static BoardFindingView here(Finding finding) {
        return of(finding, finding.line() > 0 ? "line " + finding.line() : "the text");
    }

    static BoardFindingView elsewhere(Finding finding) {
        return of(finding, "%s, line %d".formatted(finding.file(), finding.line()));
    }

    private static BoardFindingView of(Finding finding, String place) {
        boolean broken = finding.grade() == Grade.BROKEN;
        return new BoardFindingView(
                broken,
                broken ? "Broken" : "Doubtful",
                place,
                finding.line(),
                finding.what(),
                finding.value().isEmpty() ? null : finding.value(),
                finding.advice());
    }
}
