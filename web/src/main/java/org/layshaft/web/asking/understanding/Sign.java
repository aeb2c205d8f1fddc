package org.layshaft.web.asking.understanding;

import java.util.List;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.Situation;

/** What a run of words stands for where somebody tells what they notice. */
sealed interface Sign {

    /** Something noticed, by its id. */
    record OfNotice(String notice) implements Sign {}

    /** That no noise is heard: {@code quiet}. */
    record Quiet() implements Sign {}

    /** That something is not so. */
    record Not() implements Sign {}

    record When(Situation situation) implements Sign {}

    record Warm(Heat heat) implements Sign {}

    /** That it began after work on the vehicle. */
    record AfterWork() implements Sign {}

    /** Gears by derived name. */
    record In(List<String> gears) implements Sign {}

    /** That another thing begins: {@code but}. */
    record Break() implements Sign {}

    /** That the gears named next are left out: {@code except}. */
    record Except() implements Sign {}

    /** That it changes nothing. */
    record Aside() implements Sign {}
}
