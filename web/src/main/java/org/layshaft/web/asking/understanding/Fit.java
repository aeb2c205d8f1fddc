package org.layshaft.web.asking.understanding;

import java.util.List;
import java.util.Optional;
import org.layshaft.web.asking.Intent;

/**
 * How well a question fits a pattern.
 *
 * @param score from 0 to 1
 * @param gears mentions that stand for gears
 * @param part the mention that stands for the part asked about
 */
record Fit(Intent intent, Pattern pattern, double score, List<Mention> gears, Optional<Mention> part) {}
