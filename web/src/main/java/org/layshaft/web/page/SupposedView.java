package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.asking.FaultNaming;
import org.layshaft.web.desk.Told;

/**
 * A fault that is supposed.
 *
 * @param partHref to the part
 * @param removeHref to the same without it
 * @param open what is not known of it
 */
record SupposedView(String says, String partHref, String removeHref, List<OpenView> open) {

    /** Something that is not known of a fault, with the values it may have. */
    record OpenView(String what, List<LinkView> values) {}

    static List<SupposedView> all(Scene scene, KnowledgeBase knowledge, FaultNaming words) {
        return scene.faults().stream()
                .map(fault -> of(fault, scene, knowledge, words))
                .toList();
    }

    private static SupposedView of(Fault fault, Scene scene, KnowledgeBase knowledge, FaultNaming words) {
        List<OpenView> open = knowledge
                .modeOf(scene.layout(), fault)
                .map(mode -> open(fault, mode, scene, words))
                .orElse(List.of());
        return new SupposedView(
                words.said(fault),
                scene.address().at(fault.part()).link() + "#part",
                without(fault, scene).link(),
                open);
    }

    private static List<OpenView> open(Fault fault, FailureMode mode, Scene scene, FaultNaming words) {
        List<OpenView> open = new ArrayList<>();
        for (Map.Entry<String, List<String>> entry : mode.unlessTold().entrySet()) {
            String what = entry.getKey();
            if (!fault.told().containsKey(what)) {
                open.add(new OpenView(
                        words.asked(what),
                        Told.values(scene.layout(), fault.part(), entry.getValue()).stream()
                                .map(value -> LinkView.to(
                                        words.told(fault, what, value), telling(fault, fault.with(what, value), scene)))
                                .toList()));
            }
        }
        return open;
    }

    private static Address telling(Fault fault, Fault told, Scene scene) {
        List<Fault> others = new ArrayList<>(scene.faults());
        others.replaceAll(each -> each.equals(fault) ? told : each);
        return scene.address().supposing(others);
    }

    private static Address without(Fault fault, Scene scene) {
        List<Fault> others =
                scene.faults().stream().filter(each -> !each.equals(fault)).toList();
        List<Fault> own =
                scene.own().stream().filter(each -> !each.equals(fault)).toList();
        boolean onlyOwn = own.size() < scene.own().size();
        return onlyOwn ? scene.address().besides(own) : scene.address().supposing(others);
    }
}
