package org.layshaft.web.asking.understanding;

import java.util.List;
import java.util.Optional;
import org.layshaft.kb.words.Phrase;

/**
 * A question that fits a pattern, and what stands in its slots.
 *
 * @param score from 0 to 1: how much of the question the pattern takes up
 * @param taken how much that is
 * @param gears mentions of gears, in order
 * @param parts mentions of parts
 * @param boxes ids of layouts that are named
 * @param terms names of terms that are named
 */
record OpenFit(
        Phrase phrase,
        double score,
        double taken,
        List<Mention> gears,
        List<Mention> parts,
        List<String> boxes,
        List<String> terms,
        Optional<String> side) {}
