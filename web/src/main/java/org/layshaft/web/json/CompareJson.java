package org.layshaft.web.json;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.web.gallery.Property;
import org.layshaft.web.gallery.SideBySide;
import org.layshaft.web.gallery.SideBySide.Geared;
import org.layshaft.web.json.RoadJson.ToldJson;

/**
 * Two boxes side by side.
 *
 * @param spread highest forward ratio over lowest; null where there are not two
 * @param alike properties that both have, by the words that choose them
 */
public record CompareJson(
        String layout,
        String with,
        List<GearPairJson> gears,
        SpreadJson spread,
        List<DiffersJson> differences,
        List<String> alike,
        ToldJson<List<SharedPartJson>> sharedParts) {

    /** One gear in both; null where a box has none of that name. */
    public record GearPairJson(String gear, GearedJson one, GearedJson other) {}

    /** @param step ratio over that of the next higher gear; null where there is none */
    public record GearedJson(NumberJson ratio, NumberJson step) {}

    /** Of both. */
    public record SpreadJson(NumberJson one, NumberJson other) {}

    /** Something in which they differ, in words. */
    public record DiffersJson(String what, String one, String other) {}

    /** A part number that stands in both, with the ids of its places. */
    public record SharedPartJson(String number, String name, Set<String> inOne, Set<String> inOther) {}

    public static CompareJson of(SideBySide both) {
        return new CompareJson(
                both.one().layout().id(),
                both.other().layout().id(),
                both.gears().stream()
                        .map(pair -> new GearPairJson(pair.gear(), geared(pair.one()), geared(pair.other())))
                        .toList(),
                new SpreadJson(
                        number(SideBySide.spread(both.one().box())),
                        number(SideBySide.spread(both.other().box()))),
                both.structure().stream()
                        .map(each -> new DiffersJson(each.what(), each.one(), each.other()))
                        .toList(),
                both.alike().stream().map(Property::word).toList(),
                ToldJson.of(
                        both.sharedParts(),
                        parts -> parts.stream()
                                .map(part ->
                                        new SharedPartJson(part.number(), part.name(), part.inOne(), part.inOther()))
                                .toList()));
    }

    private static GearedJson geared(Optional<Geared> gear) {
        return gear.map(each -> new GearedJson(NumberJson.of(each.ratio()), number(each.step())))
                .orElse(null);
    }

    private static NumberJson number(Optional<Fraction> fraction) {
        return fraction.map(NumberJson::of).orElse(null);
    }
}
