package org.layshaft.engine.symptom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.NoticeLine;
import org.layshaft.kb.failure.Situation;

/** What faults show, cell by cell. */
final class Symptoms {
    private final Sound sound;
    private final Cells cells;
    private final Occasions occasions;

    Symptoms(Sound sound, Cells cells) {
        this.sound = sound;
        this.cells = cells;
        this.occasions = new Occasions(sound);
    }

    Shown of(Told told) {
        return of(told, new World(sound, told.effects()), List.of());
    }

    /** What several show together: one may take away what another would show, or make it worse. */
    Shown of(List<Told> all) {
        Effects effects = all.stream().map(Told::effects).reduce(Effects.NONE, Effects::and);
        return of(all, new World(sound, effects));
    }

    Shown of(List<Told> all, World world) {
        Shown shown = null;
        for (Told told : all) {
            List<Told> others = new ArrayList<>(all);
            others.remove(told);
            Shown next = of(told, world, others);
            shown = shown == null ? next : shown.and(next);
        }
        return shown;
    }

    private Shown of(Told told, World world, List<Told> others) {
        Signs either = Signs.none();
        boolean depends = told.lines().stream().anyMatch(line -> line.heat().isPresent());
        Signs cold = depends ? Signs.none() : either;
        Signs hot = depends ? Signs.none() : either;
        for (NoticeLine line : told.lines()) {
            for (Situation situation : line.in()) {
                for (String gear : cells.gears(situation)) {
                    if (occasions.holds(line, told, situation, gear, world, others)) {
                        int number = cells.number(new Cell(situation, gear), line.notice());
                        note(cold, number, line, Heat.COLD);
                        if (depends) {
                            note(hot, number, line, Heat.HOT);
                        }
                    }
                }
            }
        }
        settle(cold);
        settle(hot);
        return new Shown(cold, hot);
    }

    private static void note(Signs signs, int number, NoticeLine line, Heat heat) {
        Optional<Heat> only = line.heat();
        if (only.isEmpty() || only.get() == heat) {
            (line.may() ? signs.perhaps() : signs.certain()).set(number);
        }
    }

    private static void settle(Signs signs) {
        signs.perhaps().andNot(signs.certain());
    }
}
