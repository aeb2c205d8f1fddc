package org.layshaft.kb.reading;

import org.layshaft.kb.json.Report;

/**
 * Something read from a file, with where to tell what is wrong with it.
 *
 * @param file the file it stands in
 * @param pointer JSON pointer of the place
 * @param report takes what is found in that file
 */
public record Located<T>(T value, String file, String pointer, Report report) {
    public void broken(String what, Object shown, String advice) {
        report.broken(pointer, what, shown, advice);
    }

    /** As named in sentences about another file. */
    public String place() {
        return "%s, line %d".formatted(file, report.line(pointer));
    }
}
