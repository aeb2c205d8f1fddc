package org.layshaft.web.cli;

import java.util.List;

/** Plain text under construction: paragraphs, headings and indented lists, wrapped at 100 columns. */
final class TextPage {
    private static final int WIDTH = 100;

    private final StringBuilder text = new StringBuilder();

    /** Lines that stand as they are, after an empty one. */
    TextPage block(String lines) {
        gap();
        text.append(lines);
        if (!lines.endsWith("\n")) {
            text.append('\n');
        }
        return this;
    }

    /** Sentences, wrapped, after an empty line. */
    TextPage paragraph(String words) {
        gap();
        return item("", "", words);
    }

    /** A heading with its items beneath, each wrapped; nothing where there are none. */
    TextPage list(String heading, List<String> items) {
        if (!items.isEmpty()) {
            paragraph(heading);
            items.forEach(each -> item("  ", "- ", each));
        }
        return this;
    }

    /** One wrapped item: its first line starts with the mark, the others stand under its first word. */
    TextPage item(String indent, String mark, String words) {
        String start = indent + mark;
        String rest = " ".repeat(start.length());
        StringBuilder line = new StringBuilder(start);
        boolean empty = true;
        for (String word : words.strip().split("\\s+")) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                text.append(line).append('\n');
                line = new StringBuilder(rest);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        text.append(line).append('\n');
        return this;
    }

    private void gap() {
        if (!text.isEmpty()) {
            text.append('\n');
        }
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
