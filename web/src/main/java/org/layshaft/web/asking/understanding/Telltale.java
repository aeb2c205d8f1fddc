package org.layshaft.web.asking.understanding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Evidence;
import org.layshaft.engine.api.Observation;
import org.layshaft.kb.failure.Heat;
import org.layshaft.kb.failure.Situation;

/**
 * Puts observations together from what is heard, one sign after another. What a clause leaves out is taken from the one
 * before: in "growls in third, not in fourth" the second is about the growl too.
 */
final class Telltale {
    private static final String ANY_NOISE = "noise";

    private final List<Observation> observations = new ArrayList<>();
    private boolean afterWork;

    private Optional<String> notice = Optional.empty();
    private Optional<String> lastNotice = Optional.empty();
    private final List<Situation> situations = new ArrayList<>();
    private List<Situation> lastSituations = List.of();
    private final List<String> gears = new ArrayList<>();
    private final List<String> spared = new ArrayList<>();
    private boolean sparing;
    private Optional<Heat> heat = Optional.empty();
    private boolean not;
    private boolean comma;
    private boolean afterGear;

    void comma() {
        comma = true;
    }

    void hear(Sign sign) {
        boolean anotherGear = sign instanceof Sign.Except || sign instanceof Sign.In && (afterGear || sparing);
        boolean tells = !(sign instanceof Sign.Aside);
        if (comma && tells && !anotherGear && (notice.isPresent() || not || !gears.isEmpty())) {
            finish();
        }
        comma &= !tells;
        sparing &= !tells || sign instanceof Sign.In;
        if (sign instanceof Sign.OfNotice seen) {
            noticed(seen.notice(), false);
        } else if (sign instanceof Sign.Quiet) {
            noticed(ANY_NOISE, true);
        } else if (sign instanceof Sign.Not) {
            begin();
            not = true;
        } else if (sign instanceof Sign.When when) {
            when(when.situation());
        } else if (sign instanceof Sign.Warm warm) {
            heat = Optional.of(warm.heat());
        } else if (sign instanceof Sign.AfterWork) {
            afterWork = true;
        } else if (sign instanceof Sign.Except) {
            sparing = true;
        } else if (sign instanceof Sign.In in && sparing) {
            spare(in.gears());
        } else if (sign instanceof Sign.In in) {
            in(in.gears());
        } else if (sign instanceof Sign.Break) {
            begin();
        }
        afterGear = sign instanceof Sign.In || afterGear && !tells;
    }

    Evidence evidence() {
        finish();
        return new Evidence(observations, afterWork);
    }

    private void noticed(String what, boolean denied) {
        begin();
        notice = Optional.of(what);
        not |= denied;
    }

    /** Another observation begins where this one has its notice already. */
    private void begin() {
        if (notice.isPresent()) {
            finish();
        }
    }

    private void when(Situation situation) {
        if (!situation.isInGear() && !gears.isEmpty()) {
            if (situation == Situation.NEUTRAL_PEDAL_DOWN) {
                when(Situation.IN_GEAR_PEDAL_DOWN);
                return;
            }
            finish();
        }
        if (situation == Situation.NEUTRAL_PEDAL_DOWN) {
            situations.remove(Situation.NEUTRAL_PEDAL_UP);
        }
        if (!situations.contains(situation)) {
            situations.add(situation);
        }
    }

    private void in(List<String> some) {
        boolean standing = situations.stream().anyMatch(situation -> !situation.isInGear());
        if (standing && !situations.remove(Situation.NEUTRAL_PEDAL_DOWN)) {
            finish();
        } else if (standing) {
            situations.add(Situation.IN_GEAR_PEDAL_DOWN);
        }
        some.stream().filter(gear -> !gears.contains(gear)).forEach(gears::add);
    }

    /** In these gears it is the other way about. */
    private void spare(List<String> some) {
        gears.removeAll(some);
        some.stream().filter(gear -> !spared.contains(gear)).forEach(spared::add);
    }

    private void finish() {
        Optional<String> what = notice.or(() -> lastNotice);
        boolean says = notice.isPresent() || not || !gears.isEmpty() || !situations.isEmpty();
        if (says && what.isPresent()) {
            boolean onlyGears = notice.isEmpty() && situations.isEmpty() && !gears.isEmpty();
            List<Situation> when = onlyGears
                    ? lastSituations.stream().filter(Situation::isInGear).toList()
                    : List.copyOf(situations);
            Stream<Optional<Situation>> each =
                    when.isEmpty() ? Stream.of(Optional.empty()) : when.stream().map(Optional::of);
            each.forEach(situation -> {
                boolean standing = situation.filter(at -> !at.isInGear()).isPresent();
                observations.add(new Observation(what.get(), situation, standing ? List.of() : gears, !not, heat));
                if (!spared.isEmpty() && !standing) {
                    observations.add(new Observation(what.get(), situation, spared, not, heat));
                }
            });
            lastNotice = what;
            lastSituations = when;
        }
        if (says && what.isPresent() || notice.isPresent()) {
            situations.clear();
            gears.clear();
            spared.clear();
            notice = Optional.empty();
            heat = Optional.empty();
            not = false;
        }
    }
}
