package org.layshaft.web.json;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.Box;
import org.layshaft.web.board.Look;
import org.layshaft.web.json.FindingsJson.FindingJson;

/**
 * What a layout comes to that is not loaded.
 *
 * @param sound whether it could be saved as a layout
 * @param layout its id; null where anything in it is broken
 * @param verdict in a sentence
 * @param findings in the text
 * @param elsewhere what it would break in other files
 * @param differences printed ratios that are not what is derived
 * @param gear the one that is drawn; null where none is
 * @param svg the drawing; null where there is none
 */
public record LookJson(
        boolean sound,
        String layout,
        String name,
        String verdict,
        List<FindingJson> findings,
        List<FindingJson> elsewhere,
        List<LayoutJson.Derived> gears,
        List<Box.Difference> differences,
        String gear,
        String svg) {

    public static LookJson of(Look look, Optional<String> gear, String verdict, Optional<String> svg) {
        return new LookJson(
                look.isSound(),
                look.box().map(box -> box.layout().id()).orElse(null),
                look.box().map(box -> box.layout().name()).orElse(null),
                verdict,
                look.findings().stream().map(FindingJson::of).toList(),
                look.elsewhere().stream().map(FindingJson::of).toList(),
                look.box()
                        .map(box -> box.gears().stream()
                                .map(each -> LayoutJson.derived(each, box.layout()))
                                .toList())
                        .orElse(List.of()),
                look.box().map(Box::differences).orElse(List.of()),
                look.gear(gear).map(Box.DerivedGear::name).orElse(null),
                svg.orElse(null));
    }
}
