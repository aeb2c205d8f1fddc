package org.layshaft.engine.whatif;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.layshaft.engine.fault.KnownFault;
import org.layshaft.engine.rules.fact.Circumstances;
import org.layshaft.engine.rules.fact.Fact;
import org.layshaft.engine.symptom.Concerned;
import org.layshaft.engine.symptom.Flank;
import org.layshaft.engine.symptom.Moment;
import org.layshaft.engine.symptom.SpeedRead;
import org.layshaft.engine.symptom.World;
import org.layshaft.kb.failure.NoticeWhen;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;

/** How things turn and are loaded, by the equations, told to the rules: of one part and one occasion at a time. */
final class CircumstanceFacts {
    private final Layout layout;
    private final World equations;
    private final List<String> gears;

    private CircumstanceFacts(Layout layout, World equations, List<String> gears) {
        this.layout = layout;
        this.equations = equations;
        this.gears = List.copyOf(gears);
    }

    /** @param faults all that are present, with everything told */
    static CircumstanceFacts of(SoundBox sound, List<KnownFault> faults) {
        World equations = World.of(sound.equations(), faults);
        return new CircumstanceFacts(sound.box().layout(), equations, sound.gearNames());
    }

    World equations() {
        return equations;
    }

    /** What an occasion asks of a situation, in every gear in which it is so. */
    List<Fact> of(NoticeWhen occasion, Situation situation, Part part) {
        Concerned about = Concerned.of(layout, part);
        List<String> asked = situation.isInGear() ? gears : List.of(Run.NEUTRAL);
        return asked.stream()
                .flatMap(at -> new At(situation, at, part, about).facts(occasion))
                .toList();
    }

    /** One part, in one situation, in one gear. */
    private final class At {
        private final Situation situation;
        private final String gear;
        private final Part part;
        private final Concerned about;

        private At(Situation situation, String gear, Part part, Concerned about) {
            this.situation = situation;
            this.gear = gear;
            this.part = part;
            this.about = about;
        }

        private Stream<Fact> facts(NoticeWhen occasion) {
            return switch (occasion) {
                case WHILE_IT_TURNS -> turns(body -> true);
                case WHILE_IT_TURNS_IN_MESH ->
                    turns(body -> layout.meshes().stream().anyMatch(mesh -> mesh.joins(body)));
                case WHILE_IT_TURNS_ON_ITS_SHAFT -> Stream.concat(turns(body -> true), turnUnlike());
                case WHILE_IT_ROLLS -> turnUnlike();
                case WHILE_ITS_GEAR_TURNS_ON_IT -> Stream.concat(liesUnder(), turnUnlike());
                case WHILE_IT_ROLLS_UNDER_LOAD -> Stream.concat(turnUnlike(), carries());
                case WHILE_IT_CARRIES -> carries();
                case WHILE_ITS_DRIVE_FLANK_CARRIES ->
                    first(about.gears(), body -> moment().carriesOn(body, Flank.DRIVE))
                            .map(body -> new Circumstances.DriveFlankCarries(situation, gear, part.id(), body));
                case WHILE_ITS_COAST_FLANK_CARRIES ->
                    first(about.gears(), body -> moment().carriesOn(body, Flank.COAST))
                            .map(body -> new Circumstances.CoastFlankCarries(situation, gear, part.id(), body));
                case WHILE_ITS_SIDES_DIFFER ->
                    first(about.differentials(), id -> moment().sidesDiffer(layout.the(Differential.class, id)))
                            .map(body -> new Circumstances.SidesDiffer(situation, gear, part.id(), body));
                case WHERE_WHEELS_ARE_TIED ->
                    moment().wheelsAreTied() ? Stream.of(new Circumstances.WheelsTied(situation, gear)) : Stream.of();
                case WHERE_SPEED_IS_READ_STANDING -> readStanding();
                case IN_A_GEAR_THROUGH_TEETH -> throughTeeth();
                case IN_ITS_GEAR,
                        AT_ITS_GEAR,
                        IN_ANY_GEAR,
                        IN_A_GEAR_WITH_RING,
                        IN_A_GEAR_WITHOUT_RING,
                        ALWAYS,
                        WHERE_IT_TAKES_THE_DRIVE,
                        WHERE_NEUTRAL_DRIVES,
                        WHERE_IT_LOCKS,
                        WHERE_TWO_CAN_MEET -> Stream.of();
            };
        }

        private Moment moment() {
            return equations.moment(situation, gear);
        }

        private Stream<Fact> turns(Predicate<String> which) {
            return first(about.bodies(), body -> which.test(body) && moment().turns(body))
                    .map(body -> new Circumstances.Turns(situation, gear, part.id(), body));
        }

        private Stream<Fact> turnUnlike() {
            return first(about.pairs(), moment()::turnUnlike)
                    .map(pair -> new Circumstances.TurnUnlike(situation, gear, part.id(), pair.inner(), pair.outer()));
        }

        private Stream<Fact> liesUnder() {
            return about.gearOn(layout).stream().map(outer -> new Circumstances.LiesUnder(part.id(), outer));
        }

        private Stream<Fact> throughTeeth() {
            Moment pulling = equations.moment(Situation.PULLING, gear);
            List<String> all = layout.all(Gear.class).map(Gear::id).toList();
            return first(all, any -> pulling.carriesOn(any, Flank.DRIVE) || pulling.carriesOn(any, Flank.COAST))
                    .map(any -> new Circumstances.ThroughTeeth(gear, any));
        }

        private Stream<Fact> carries() {
            return first(about.bodies(), moment()::carries)
                    .map(body -> new Circumstances.CarriesThen(situation, gear, part.id(), body));
        }

        private Stream<Fact> readStanding() {
            return first(SpeedRead.from(layout), equations.moment(Situation.SELECTED, gear)::turns)
                    .map(body -> new Circumstances.Turns(Situation.SELECTED, gear, body, body));
        }

        private <T> Stream<T> first(List<T> all, Predicate<T> so) {
            Optional<T> first = all.stream().filter(so).findFirst();
            return first.stream();
        }
    }
}
