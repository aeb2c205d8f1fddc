package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Explanations as HTML. They are written as plain text with little in it: headings after {@code #}, items after
 * {@code -}, strong words between two stars, code between backticks, an empty line between paragraphs. All else is text,
 * and escaped.
 */
final class Explanation {
    private static final Pattern STRONG = Pattern.compile("\\*\\*([^*]+)\\*\\*");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");

    private Explanation() {}

    static String html(String text) {
        StringBuilder html = new StringBuilder();
        for (String block : text.strip().split("\\R\\s*\\R")) {
            html.append(block(block.strip().lines().map(String::strip).toList()));
        }
        return html.toString();
    }

    private static String block(List<String> lines) {
        String first = lines.get(0);
        if (first.startsWith("#")) {
            int level = first.length() - first.replaceFirst("^#+", "").length();
            String heading = "<h%d>%s</h%d>\n"
                    .formatted(level, inline(first.substring(level).strip()), level);
            return lines.size() == 1 ? heading : heading + block(lines.subList(1, lines.size()));
        }
        if (first.startsWith("- ")) {
            return "<ul>\n" + String.join("", items(lines)) + "</ul>\n";
        }
        return "<p>%s</p>\n".formatted(inline(String.join(" ", lines)));
    }

    private static List<String> items(List<String> lines) {
        List<String> items = new ArrayList<>();
        for (String line : lines) {
            if (line.startsWith("- ")) {
                items.add(line.substring(2));
            } else {
                items.set(items.size() - 1, items.get(items.size() - 1) + " " + line);
            }
        }
        return items.stream()
                .map(item -> "<li>%s</li>\n".formatted(inline(item)))
                .toList();
    }

    private static String inline(String text) {
        String escaped = Templates.escaped(text);
        String coded = CODE.matcher(escaped).replaceAll("<code>$1</code>");
        return STRONG.matcher(coded).replaceAll("<strong>$1</strong>");
    }
}
