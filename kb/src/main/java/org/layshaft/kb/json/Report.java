package org.layshaft.kb.json;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.finding.Finding.Grade;

/** Gathers what is found in one file. Not thread-safe. */
public final class Report {
    private final String file;
    private final ToIntFunction<String> lines;
    private final Set<Finding> findings = new LinkedHashSet<>();

    private Report(String file, ToIntFunction<String> lines) {
        this.file = file;
        this.lines = lines;
    }

    public static Report on(Document document) {
        return new Report(document.file(), document::line);
    }

    /** For a file that could not be read: only whole lines can be named. */
    public static Report on(String file) {
        return new Report(file, pointer -> 0);
    }

    public void broken(String pointer, String what, Object value, String advice) {
        add(Grade.BROKEN, pointer, lines.applyAsInt(pointer), what, value, advice);
    }

    public void doubtful(String pointer, String what, Object value, String advice) {
        add(Grade.DOUBTFUL, pointer, lines.applyAsInt(pointer), what, value, advice);
    }

    /** Another on the same file, with nothing in it yet. */
    public Report another() {
        return new Report(file, lines);
    }

    /** Whether anything in the file is broken. */
    public boolean isBroken() {
        return findings.stream().anyMatch(finding -> finding.grade() == Grade.BROKEN);
    }

    /** For what stands on another line than its JSON pointer has, or where there is no pointer. */
    void brokenAt(String pointer, int line, String what, Object value, String advice) {
        add(Grade.BROKEN, pointer, line, what, value, advice);
    }

    /** The line of a place, for sentences that name it. */
    public int line(String pointer) {
        return lines.applyAsInt(pointer);
    }

    /**
     * Takes over what was found about the meaning, save where this report already complains: about the value itself,
     * about something around it, or about something directly in it. There it would only say the same again.
     */
    public void addWhereUnspoilt(Report meaning) {
        addWhereUnspoilt(meaning.findings());
    }

    /** The same with findings picked from another report. */
    public void addWhereUnspoilt(Collection<Finding> meaning) {
        List<Finding> spoilt = findings();
        meaning.stream()
                .filter(finding -> spoilt.stream().noneMatch(other -> spoils(other.pointer(), finding.pointer())))
                .forEach(findings::add);
    }

    private static boolean spoils(String spoilt, String pointer) {
        if (spoilt.isEmpty()) {
            return false;
        }
        return Pointers.isWithin(spoilt, pointer) || pointer.equals(Pointers.parent(spoilt)) && !pointer.isEmpty();
    }

    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    private void add(Grade grade, String pointer, int line, String what, Object value, String advice) {
        findings.add(new Finding(grade, file, pointer, line, what, Shown.of(value), advice));
    }
}
