package org.layshaft.web.asking;

import java.util.List;

/** Answers questions about parts, in sentences. */
@FunctionalInterface
public interface PartsAnswers {
    /** Throws {@link org.layshaft.engine.api.UnanswerableException} where the question cannot stand. */
    List<String> says(Question.OfParts question);
}
