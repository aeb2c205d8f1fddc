package org.layshaft.web.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Conflict;
import org.layshaft.engine.api.Stance;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Interlock;
import org.layshaft.kb.layout.InterlockKind;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Lever;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Side;
import org.layshaft.web.asking.Saying;

/** Whether levers, rails and interlock would let a stance come about. */
final class LeversByHand {
    private final Layout layout;
    private final Names names;
    private final Box box;
    private final WhatIf whatIf;

    LeversByHand(Layout layout, Names names, Box box, WhatIf whatIf) {
        this.layout = layout;
        this.names = names;
        this.box = box;
        this.whatIf = whatIf;
    }

    /** What keeps the levers from it; empty where they can stand so. */
    List<String> against(Stance stance) {
        Map<String, Side> pushed = pushed(stance);
        List<String> against = new ArrayList<>(torn(stance));
        for (Lever lever : layout.levers()) {
            Map<String, Side> ofLever = ofLever(lever, pushed);
            boolean stands = ofLever.isEmpty() ? lever.neutral() : has(lever, ofLever);
            if (!stands) {
                against.addAll(
                        ofLever.isEmpty()
                                ? List.of("The %s has no neutral: it always stands at one of its places."
                                        .formatted(called(lever)))
                                : apart(lever, ofLever));
            }
        }
        return against;
    }

    /** How the levers stand then, in sentences. */
    List<String> allowing(Stance stance) {
        Map<String, Side> pushed = pushed(stance);
        long used = layout.levers().stream()
                .filter(lever -> !ofLever(lever, pushed).isEmpty())
                .count();
        if (pushed.isEmpty()) {
            return List.of();
        }
        return List.of(
                used < 2
                        ? "The lever can bring it there."
                        : "The levers can stand so together: each has its own, and they do not keep each other apart.");
    }

    /** Rails, and inner clutches, by where they stand. */
    private Map<String, Side> pushed(Stance stance) {
        Map<String, Side> pushed = new TreeMap<>();
        stance.engaged()
                .forEach((member, side) ->
                        pushed.put(layout.forkOf(member).map(Fork::rail).orElse(member), side));
        return pushed;
    }

    /** Rails whose forks do not stand alike. */
    private List<String> torn(Stance stance) {
        List<String> torn = new ArrayList<>();
        layout.all(Rail.class).forEach(rail -> {
            Map<String, Optional<Side>> stands = new LinkedHashMap<>();
            rail.forks().forEach(fork -> {
                String member = layout.the(Fork.class, fork).member();
                stands.put(member, stance.of(member));
            });
            Set<Side> sides = new LinkedHashSet<>();
            stands.values().forEach(side -> side.ifPresent(sides::add));
            boolean left = sides.size() == 1
                    && stands.entrySet().stream()
                            .anyMatch(entry -> entry.getValue().isEmpty()
                                    && layout.member(entry.getKey())
                                            .at(sides.iterator().next())
                                            .isPresent());
            if (sides.size() > 1 || left) {
                torn.add("%s moves %s together: they cannot stand so."
                        .formatted(Saying.sentence(names.the(rail.id())), names.list(stands.keySet())));
            }
        });
        return torn;
    }

    private static Map<String, Side> ofLever(Lever lever, Map<String, Side> pushed) {
        Map<String, Side> some = new TreeMap<>(pushed);
        some.keySet()
                .removeIf(rail -> lever.places().stream()
                        .noneMatch(place -> place.pushes().containsKey(rail)));
        return some;
    }

    private static boolean has(Lever lever, Map<String, Side> pushes) {
        return lever.places().stream().anyMatch(place -> place.pushes().equals(pushes));
    }

    private List<String> apart(Lever lever, Map<String, Side> pushes) {
        List<String> says = new ArrayList<>();
        List<Map.Entry<String, Side>> all = List.copyOf(pushes.entrySet());
        for (int one = 0; one < all.size(); one++) {
            for (int other = one + 1; other < all.size(); other++) {
                says.add(pair(lever, all.get(one), all.get(other)));
            }
        }
        return says.isEmpty() ? List.of("The %s has no place for that.".formatted(called(lever))) : says;
    }

    private String pair(Lever lever, Map.Entry<String, Side> one, Map.Entry<String, Side> other) {
        List<String> both = List.of(one.getKey(), other.getKey());
        Optional<Conflict> told = whatIf.conflicts().stream()
                .filter(conflict -> isOf(conflict, one, other))
                .findFirst();
        if (told.filter(Conflict::canMeet).isPresent()) {
            return "The %s selects one place at a time, but nothing keeps %s apart: with one engaged the other can still be moved."
                    .formatted(called(lever), names.list(both));
        }
        List<String> pieces =
                told.map(Conflict::preventedBy).filter(by -> !by.isEmpty()).orElseGet(() -> interlock(both));
        return pieces.isEmpty()
                ? "The %s has no place that moves %s at once.".formatted(called(lever), names.list(both))
                : "The interlock does not let it: %s %s %s apart."
                        .formatted(names.list(pieces), pieces.size() == 1 ? "keeps" : "keep", names.list(both));
    }

    private boolean isOf(Conflict conflict, Map.Entry<String, Side> one, Map.Entry<String, Side> other) {
        Map<String, Side> pushes = new TreeMap<>();
        conflict.gears()
                .forEach(gear -> box.gears().stream()
                        .filter(derived -> derived.name().equals(gear))
                        .flatMap(derived -> derived.first().stream())
                        .forEach(push -> pushes.put(push.rail(), push.side())));
        return pushes.equals(new TreeMap<>(Map.ofEntries(one, other)));
    }

    /** The sound interlock that rules these rails, for places that are no gears by themselves. */
    private List<String> interlock(List<String> rails) {
        return whatIf.faults().isEmpty()
                ? layout.all(Interlock.class)
                        .filter(interlock -> interlock.form() != InterlockKind.NONE)
                        .filter(interlock -> interlock.rails().containsAll(rails))
                        .map(Interlock::id)
                        .toList()
                : List.of();
    }

    private static String called(Lever lever) {
        return lever.id().equals(Lever.GEAR) ? "gear lever" : lever.name() + " lever";
    }
}
