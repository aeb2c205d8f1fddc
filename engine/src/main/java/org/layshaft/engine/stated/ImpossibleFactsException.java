package org.layshaft.engine.stated;

import java.util.List;

/** Stated facts that cannot be so. The message is a sentence for each problem, with the value and what to do. */
public final class ImpossibleFactsException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> problems;

    public ImpossibleFactsException(List<String> problems) {
        super(String.join("\n", problems));
        this.problems = List.copyOf(problems);
    }

    public List<String> problems() {
        return problems;
    }
}
