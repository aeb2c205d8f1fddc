package org.layshaft.web.json;

import java.math.BigDecimal;
import java.util.List;
import org.layshaft.engine.api.Box;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.pack.KnowledgeBase;

/**
 * One layout with what is derived from it.
 *
 * @param input id of the shaft that the clutch drives
 * @param outputs ids of the shafts and half-shafts that the drive leaves by
 * @param differences printed ratios that are not what is derived
 */
public record LayoutJson(
        String id,
        String name,
        String summary,
        String input,
        List<String> outputs,
        List<Derived> gears,
        List<Box.Difference> differences,
        List<PartJson> parts) {

    /**
     * A gear as derived.
     *
     * @param printed its ratio in the service data; null where none is given
     * @param rail id of the rail that selects it, and the side to which that is pushed
     * @param member id of the sleeve or sliding gear
     */
    public record Derived(
            String gear,
            String direction,
            NumberJson ratio,
            BigDecimal printed,
            String rail,
            String side,
            String member) {}

    /**
     * A part.
     *
     * @param teeth null for anything but a gear
     * @param modes names of the ways in which it can fail, most common first
     */
    public record PartJson(String id, String name, List<String> also, String kind, Integer teeth, List<String> modes) {}

    public static LayoutJson of(Box box, KnowledgeBase knowledge) {
        Layout layout = box.layout();
        return new LayoutJson(
                layout.id(),
                layout.name(),
                layout.summary(),
                layout.input(),
                layout.outputs(),
                box.gears().stream().map(gear -> derived(gear, layout)).toList(),
                box.differences(),
                parts(layout, knowledge));
    }

    static Derived derived(Box.DerivedGear gear, Layout layout) {
        return new Derived(
                gear.name(),
                gear.direction().word(),
                NumberJson.of(gear.ratio()),
                layout.printedRatios().get(gear.name()),
                gear.first().map(Box.Push::rail).orElse(null),
                gear.first().map(push -> push.side().word()).orElse(null),
                gear.first().map(Box.Push::member).orElse(null));
    }

    static List<PartJson> parts(Layout layout, KnowledgeBase knowledge) {
        return layout.parts().values().stream()
                .map(part -> part(part, knowledge))
                .toList();
    }

    private static PartJson part(Part part, KnowledgeBase knowledge) {
        return new PartJson(
                part.id(),
                part.name(),
                part.also(),
                part.kind().word(),
                part instanceof Gear gear ? gear.teeth() : null,
                knowledge.failureModesOf(part).stream().map(FailureMode::name).toList());
    }
}
