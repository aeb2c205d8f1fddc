package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.GearVerdict;
import org.layshaft.engine.api.NeutralVerdict;
import org.layshaft.engine.api.Possibility;
import org.layshaft.engine.api.Reason;
import org.layshaft.engine.api.Verdict;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.Situation;

/**
 * What some faults come to: every situation in which anything is noticed, against every gear. Gears that show the same
 * throughout share a column.
 *
 * @param columns of the gears, first to top and then reverse
 * @param neutral what the lever in neutral does
 * @param rows in the order of the situations
 */
public record FaultTable(List<Column> columns, Neutral neutral, List<Row> rows) {
    public FaultTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * Gears that show the same.
     *
     * @param gears by derived name
     * @param cases the ways things may be, where it matters to these gears which of them holds; otherwise empty
     */
    public record Column(List<String> gears, Verdict verdict, List<Case> cases) {}

    /** The lever in neutral, which a box may not have. */
    public record Neutral(boolean exists, Verdict verdict, List<Case> cases) {}

    /** One way things may be, in words, and what becomes of the gear then. */
    public record Case(String says, Verdict verdict) {
        static List<Case> all(List<Possibility> possibilities) {
            return Differing.among(possibilities).stream()
                    .map(possibility -> new Case(possibility.says(), possibility.verdict()))
                    .toList();
        }
    }

    /**
     * One situation.
     *
     * @param cells one for each column; of a situation that is not in gear, one alone
     */
    public record Row(Situation situation, List<List<Seen>> cells) {}

    /**
     * Something noticed.
     *
     * @param certain whether it is noticed in every case
     * @param onlyIf the cases in which it may be, where it is not in all; empty too where that depends on how bad it is
     * @param says it in a clause
     * @param because why, in the first gear of the column
     */
    public record Seen(
            String notice, Optional<Heat> heat, boolean certain, List<String> onlyIf, String says, Reason because) {
        /** What of it must be alike in gears that share a column. */
        List<Object> alike() {
            return List.of(notice, heat, certain, onlyIf);
        }
    }

    public static FaultTable of(WhatIf whatIf, Names names) {
        SeenInCells seen = new SeenInCells(names);
        Map<List<Object>, List<GearVerdict>> alike = new LinkedHashMap<>();
        for (GearVerdict gear : whatIf.gears()) {
            List<Object> key = new ArrayList<>(List.of(gear.verdict(), Case.all(gear.possibilities())));
            inGear().forEach(situation -> seen.of(situation, gear.notices(), gear.possibilities())
                    .forEach(each -> key.add(List.of(situation, each.alike()))));
            alike.computeIfAbsent(key, none -> new ArrayList<>()).add(gear);
        }
        List<GearVerdict> firsts =
                alike.values().stream().map(some -> some.get(0)).toList();
        NeutralVerdict neutral = whatIf.neutral();
        List<Row> rows = new ArrayList<>();
        for (Situation situation : Situation.values()) {
            List<List<Seen>> cells = situation.isInGear()
                    ? firsts.stream()
                            .map(gear -> seen.of(situation, gear.notices(), gear.possibilities()))
                            .toList()
                    : List.of(seen.of(situation, neutral.notices(), neutral.possibilities()));
            if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
                rows.add(new Row(situation, cells));
            }
        }
        return new FaultTable(
                alike.values().stream().map(FaultTable::column).toList(),
                new Neutral(neutral.exists(), neutral.verdict(), Case.all(neutral.possibilities())),
                rows);
    }

    private static Column column(List<GearVerdict> gears) {
        return new Column(
                gears.stream().map(GearVerdict::gear).toList(),
                gears.get(0).verdict(),
                Case.all(gears.get(0).possibilities()));
    }

    private static Stream<Situation> inGear() {
        return Arrays.stream(Situation.values()).filter(Situation::isInGear);
    }
}
