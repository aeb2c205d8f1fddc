package org.layshaft.web.asking;

import java.util.List;
import org.layshaft.kb.failure.Fault;

/** What was made of the words for one or more failures. */
public sealed interface FaultUnderstanding {

    /** They are these, in the order of the words. */
    record Faults(List<Fault> faults) implements FaultUnderstanding {}

    /**
     * They are not clear.
     *
     * @param says what is wrong with the words, in one or two sentences
     * @param nearest failures that will be understood, nearest first
     */
    record Problem(String says, List<String> nearest) implements FaultUnderstanding {}
}
