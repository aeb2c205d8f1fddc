package org.layshaft.engine.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.layshaft.kb.catalogue.Build;
import org.layshaft.kb.catalogue.Catalogue;
import org.layshaft.kb.catalogue.CataloguePart;
import org.layshaft.kb.catalogue.Fact;
import org.layshaft.kb.catalogue.FactName.Unit;
import org.layshaft.kb.catalogue.Facts;
import org.layshaft.kb.catalogue.PartSet;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;

/**
 * As many boxes and sets as asked for, drawn from those of Saltmarsh: copies of its builds and sets, larger or smaller by
 * one of ten factors, so that all lengths of a box still suit one another and a tenth of all boxes suits a set.
 */
final class ManyBoxes {
    private static final int FACTORS = 10;

    private final KnowledgeBase saltmarsh;
    private final Map<String, Layout> layouts = new LinkedHashMap<>();
    private final Map<String, CataloguePart> parts = new LinkedHashMap<>();
    private final Map<String, PartSet> sets = new LinkedHashMap<>();
    private final Map<String, Build> builds = new LinkedHashMap<>();

    private ManyBoxes(KnowledgeBase saltmarsh) {
        this.saltmarsh = saltmarsh;
    }

    static KnowledgeBase of(KnowledgeBase saltmarsh, int boxes, int sets) {
        ManyBoxes many = new ManyBoxes(saltmarsh);
        List<Build> builds = List.copyOf(saltmarsh.catalogue().builds().values());
        for (int number = 0; number < boxes; number++) {
            many.box(builds.get(number % builds.size()), number / builds.size());
        }
        List<PartSet> all = List.copyOf(saltmarsh.catalogue().sets().values());
        for (int number = 0; number < sets; number++) {
            many.set(all.get(number % all.size()), number / all.size());
        }
        return new KnowledgeBase(
                saltmarsh.packs(),
                many.layouts,
                saltmarsh.failureModes(),
                saltmarsh.words(),
                new Catalogue(many.parts, many.sets, many.builds, List.of(), List.of()));
    }

    private void box(Build build, int copy) {
        Layout layout = saltmarsh.layouts().get(build.layout());
        String id = build.layout() + "-" + build.id() + "-" + copy;
        layouts.put(id, named(layout, id));
        Map<String, String> fitted = new LinkedHashMap<>();
        build.fitted().forEach((place, number) -> fitted.put(place, part(number, copy)));
        builds.put(id, new Build(id, id, id, build.serials(), fitted));
    }

    private void set(PartSet set, int copy) {
        Map<String, String> roles = new LinkedHashMap<>();
        set.parts().forEach((role, number) -> roles.put(role, part(number, copy)));
        String number = set.number() + "-" + copy;
        sets.put(
                number,
                new PartSet(number, set.name(), set.shape(), roles, set.onlyWhole(), set.oneDesign(), set.note()));
    }

    private String part(String number, int copy) {
        double factor = 1 + copy % FACTORS / 10.0;
        String name = number + "-" + copy;
        CataloguePart part = saltmarsh.catalogue().part(number).orElseThrow();
        Map<String, Facts> features = new LinkedHashMap<>();
        part.features().forEach((place, facts) -> features.put(place, larger(facts, factor)));
        parts.computeIfAbsent(
                name,
                none -> new CataloguePart(
                        name, part.kind(), part.name(), larger(part.facts(), factor), features, part.note()));
        return name;
    }

    private static Facts larger(Facts facts, double factor) {
        UnaryOperator<Fact> larger =
                fact -> fact.name().unit().filter(unit -> unit == Unit.MM).isPresent()
                        ? Fact.of(fact.name(), fact.number() * factor)
                        : fact;
        return Facts.of(facts.all().stream().map(larger).toList());
    }

    private static Layout named(Layout layout, String id) {
        return new Layout(
                id,
                layout.name(),
                layout.summary(),
                layout.input(),
                layout.outputs(),
                layout.takeOffs(),
                layout.meshes(),
                layout.members(),
                layout.gate(),
                layout.levers(),
                layout.printedRatios(),
                layout.road(),
                layout.parts());
    }
}
