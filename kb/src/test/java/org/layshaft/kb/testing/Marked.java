package org.layshaft.kb.testing;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.layshaft.kb.finding.Finding;

/**
 * Example files that say themselves what is to be found in them: a line with the comment {@code // broken: …} has a
 * broken finding whose sentence contains that text, a line with {@code // doubtful: …} a doubtful one. Every other line
 * has none. What is marked {@code // also …} is found too when all checks run, not by the one the file is about.
 */
public final class Marked {
    private static final Pattern MARK = Pattern.compile("// (also )?(broken|doubtful): (.*?)(?= // |$)");

    private Marked() {}

    private record Mark(boolean also, String grade, int line, String text) {
        boolean fits(Finding finding) {
            return finding.line() == line
                    && finding.grade().name().toLowerCase(Locale.ROOT).equals(grade)
                    && finding.what().contains(text);
        }
    }

    /** Fails, saying what is missing and what is too much, unless findings and marks are the same. */
    public static void check(Path file, List<Finding> findings, boolean allChecks) {
        List<Finding> unmarked = new ArrayList<>(findings);
        List<Mark> notFound = new ArrayList<>();
        for (Mark mark : marks(file)) {
            if (allChecks || !mark.also()) {
                unmarked.stream()
                        .filter(mark::fits)
                        .findFirst()
                        .ifPresentOrElse(unmarked::remove, () -> notFound.add(mark));
            }
        }
        if (!unmarked.isEmpty() || !notFound.isEmpty()) {
            fail("%s%nmarked, but not found: %s%nfound, but not marked: %s".formatted(file, notFound, unmarked));
        }
    }

    private static List<Mark> marks(Path file) {
        List<Mark> marks = new ArrayList<>();
        List<String> lines = lines(file);
        for (int line = 1; line <= lines.size(); line++) {
            Matcher matcher = MARK.matcher(lines.get(line - 1));
            while (matcher.find()) {
                marks.add(new Mark(matcher.group(1) != null, matcher.group(2), line, matcher.group(3)));
            }
        }
        return marks;
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    /** A file or folder among the test resources. */
    public static Path resource(String name) {
        return Path.of("src", "test", "resources").resolve(name);
    }
}
