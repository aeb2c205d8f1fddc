package org.layshaft.kb.pack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.kb.check.LayoutChecks;
import org.layshaft.kb.finding.Finding;
import org.layshaft.kb.finding.Finding.Grade;
import org.layshaft.kb.json.Report;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.parts.BuiltLayout;
import org.layshaft.kb.parts.LayoutBuilder;
import org.layshaft.kb.parts.PlainNames;
import org.layshaft.kb.reading.Located;
import org.layshaft.kb.typed.Assembly;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedUnit;

/**
 * Builds and checks the layouts of all packs, those that are joined from others after these. What is wrong with a unit is
 * told where the unit is, not again where it is used. Not thread-safe.
 */
final class LayoutBuilding {
    /** Beyond this a layout is not checked: the checks compare each with each. */
    private static final int MOST_IN_A_LAYOUT = 1_000;

    /** How deep units may lie in units. */
    private static final int DEEPEST = 8;

    private final List<ReadPack> packs;
    private final Map<String, Source> sources = new HashMap<>();
    private final Map<Source, Optional<Built>> built = new HashMap<>();
    private final List<Use> uses = new ArrayList<>();

    private LayoutBuilding(List<ReadPack> packs) {
        this.packs = packs;
    }

    /** Where a layout was read: the place of its pack among all, and its own place in that. */
    private record Source(int pack, int place) {}

    /** A layout with all its units in place, and what came of it. */
    private record Built(TypedLayout whole, Layout layout) {}

    /** A unit that was put in place. */
    private record Use(Source whole, TypedUnit unit, Source from) {}

    static LayoutBuilding of(List<ReadPack> packs) {
        LayoutBuilding building = new LayoutBuilding(packs);
        building.all()
                .forEach(source -> building.sources.putIfAbsent(
                        building.read(source).value().id().id(), source));
        building.all().forEach(source -> building.build(source, List.of()));
        building.tellUnitsOfBrokenPacks();
        return building;
    }

    List<Layout> layoutsOf(ReadPack pack) {
        return sourcesIn(packs.indexOf(pack))
                .flatMap(source -> built.get(source).stream())
                .map(Built::layout)
                .toList();
    }

    private Stream<Source> all() {
        return Stream.iterate(0, pack -> pack < packs.size(), pack -> pack + 1).flatMap(this::sourcesIn);
    }

    private Stream<Source> sourcesIn(int pack) {
        int layouts = packs.get(pack).layouts().size();
        return Stream.iterate(0, place -> place < layouts, place -> place + 1).map(place -> new Source(pack, place));
    }

    private Located<TypedLayout> read(Source source) {
        return packs.get(source.pack()).layouts().get(source.place());
    }

    private Optional<Built> build(Source source, List<Source> way) {
        Optional<Built> before = built.get(source);
        if (before != null) {
            return before;
        }
        Optional<Built> now = whole(source, way).map(whole -> checked(whole, source));
        built.put(source, now);
        return now;
    }

    private Built checked(TypedLayout typed, Source source) {
        List<TypedUnit> units = read(source).value().units();
        TypedLayout whole = units.isEmpty() ? typed : PlainNames.added(typed, units);
        BuiltLayout layout = LayoutBuilder.build(whole);
        Report report = read(source).report();
        Report meaning = report.another();
        LayoutChecks.run(whole, layout, meaning);
        report.addWhereUnspoilt(meaning.findings().stream()
                .filter(finding -> !isToldAtTheUnit(finding, units))
                .toList());
        return new Built(whole, layout.layout());
    }

    private static boolean isToldAtTheUnit(Finding finding, List<TypedUnit> units) {
        return finding.grade() == Grade.DOUBTFUL
                && units.stream()
                        .anyMatch(unit ->
                                finding.pointer().startsWith(unit.layout().pointer()));
    }

    /** The layout with its units in place; empty where that cannot be, which has then been told. */
    private Optional<TypedLayout> whole(Source source, List<Source> way) {
        TypedLayout own = read(source).value();
        List<Source> inward = Stream.concat(way.stream(), Stream.of(source)).toList();
        Map<String, TypedLayout> units = new LinkedHashMap<>();
        for (TypedUnit unit : own.units()) {
            unit(unit, source, inward).ifPresent(layout -> units.put(unit.name(), layout));
        }
        if (units.size() < own.units().size() || !areJoined(own, read(source).report())) {
            return Optional.empty();
        }
        int size =
                own.size() + units.values().stream().mapToInt(TypedLayout::size).sum();
        if (size > MOST_IN_A_LAYOUT) {
            read(source)
                    .report()
                    .broken(
                            "",
                            "The layout has more than %d gears, sleeves, rails and names.".formatted(MOST_IN_A_LAYOUT),
                            size,
                            "No gearbox has; look for a list that was pasted many times.");
            return Optional.empty();
        }
        return Optional.of(own.units().isEmpty() ? own : Assembly.of(own, units));
    }

    /** Gears of the whole may tie its units otherwise than by joins. */
    private static boolean areJoined(TypedLayout own, Report report) {
        List<TypedUnit> loose = own.units().stream()
                .filter(unit -> own.shafts().isEmpty() && own.units().size() > 1)
                .filter(unit -> own.joins().stream()
                        .flatMap(join -> Stream.of(join.from().id(), join.to().id()))
                        .noneMatch(end -> end.startsWith(unit.name() + "-")))
                .toList();
        loose.forEach(unit -> new UnitFindings(unit, report).notJoined());
        return loose.isEmpty();
    }

    /** The layout of a unit, whole; empty where there is none, which has then been told. */
    private Optional<TypedLayout> unit(TypedUnit unit, Source source, List<Source> inward) {
        UnitFindings findings = new UnitFindings(unit, read(source).report());
        Source from = sources.get(unit.layout().id());
        if (from == null) {
            findings.unknown(readBefore(source));
        } else if (from.pack() > source.pack()) {
            findings.readLater(read(from).place());
        } else if (inward.contains(from)) {
            findings.ring(ids(inward.subList(inward.indexOf(from), inward.size())));
        } else if (inward.size() > DEEPEST) {
            findings.tooDeep(ids(inward), DEEPEST);
        } else {
            Optional<Built> found =
                    build(from, inward).filter(whole -> !read(from).report().isBroken());
            if (found.isEmpty()) {
                findings.broken(read(from).file());
            }
            uses.add(new Use(source, unit, from));
            return found.map(Built::whole);
        }
        return Optional.empty();
    }

    private List<String> readBefore(Source source) {
        return sources.entrySet().stream()
                .filter(entry -> entry.getValue().pack() <= source.pack())
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }

    private List<String> ids(List<Source> way) {
        return way.stream().map(source -> read(source).value().id().id()).toList();
    }

    /** Nothing of a broken pack is loaded, not as a unit of another either. */
    private void tellUnitsOfBrokenPacks() {
        Optional<Use> broken = Optional.empty();
        do {
            broken.ifPresent(
                    use -> new UnitFindings(use.unit(), read(use.whole()).report())
                            .brokenPack(read(use.from()).file()));
            broken = uses.stream()
                    .filter(use -> packs.get(use.whole().pack()).isSound())
                    .filter(use -> !packs.get(use.from().pack()).isSound())
                    .findFirst();
        } while (broken.isPresent());
    }
}
