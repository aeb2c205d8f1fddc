package org.layshaft.web.cli;

import java.util.ArrayList;
import java.util.List;

/** A table in plain text, its columns as wide as what stands in them. */
final class TextTable {
    private static final String GAP = "  ";

    private final List<List<String>> rows = new ArrayList<>();

    TextTable(String... headings) {
        rows.add(List.of(headings));
    }

    /** Adds a row with as many cells as there are headings. */
    void row(List<String> cells) {
        rows.add(List.copyOf(cells));
    }

    /** Adds a row whose last cell has any number of lines. */
    void row(List<String> cells, List<String> lastCell) {
        List<String> lines = lastCell.isEmpty() ? List.of("") : lastCell;
        for (int line = 0; line < lines.size(); line++) {
            List<String> row = new ArrayList<>();
            for (String cell : cells) {
                row.add(line == 0 ? cell : "");
            }
            row.add(lines.get(line));
            row(row);
        }
    }

    /** One line for each row, the headings first. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < row.size(); column++) {
                line.append(GAP).append(row.get(column));
                line.append(" ".repeat(width(column) - row.get(column).length()));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private int width(int column) {
        return rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
    }
}
