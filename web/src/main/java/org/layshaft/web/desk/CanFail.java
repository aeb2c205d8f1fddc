package org.layshaft.web.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.pack.KnowledgeBase;

/**
 * One way in which one part of a layout can fail.
 *
 * @param tellable what can be told of it, each with every value it may have here
 */
public record CanFail(Part part, FailureMode mode, Map<String, List<String>> tellable) {

    /** Everything that can fail, in the order of the parts. */
    public static List<CanFail> all(KnowledgeBase knowledge, Layout layout) {
        return layout.parts().values().stream()
                .flatMap(part -> of(knowledge, layout, part).stream())
                .toList();
    }

    /** What can befall a part; a spindle with no place to be cut at cannot be cut. */
    public static List<CanFail> of(KnowledgeBase knowledge, Layout layout, Part part) {
        return knowledge.failureModesOf(part).stream()
                .map(mode -> new CanFail(part, mode, tellable(mode, layout, part)))
                .filter(failure -> failure.tellable().values().stream().noneMatch(List::isEmpty))
                .toList();
    }

    private static Map<String, List<String>> tellable(FailureMode mode, Layout layout, Part part) {
        Map<String, List<String>> tellable = new LinkedHashMap<>();
        mode.unlessTold().forEach((what, values) -> tellable.put(what, Told.values(layout, part.id(), values)));
        return tellable;
    }

    /** With nothing told of it. */
    public Fault fault() {
        return Fault.of(part.id(), mode.name());
    }

    /** As it is written, with everything that can be told: {@code 3-4-fork bent [side=front|rear]}. */
    public String written() {
        StringBuilder written = new StringBuilder(fault().written());
        tellable.forEach((what, values) -> written.append(" [%s=%s]".formatted(what, String.join("|", values))));
        return written.toString();
    }
}
