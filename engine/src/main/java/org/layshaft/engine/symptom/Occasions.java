package org.layshaft.engine.symptom;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.fault.Sides;
import org.layshaft.kb.failure.NoticeLine;
import org.layshaft.kb.failure.Situation;
import org.layshaft.kb.layout.Differential;
import org.layshaft.kb.layout.Engagement;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Side;

/** Puts the occasions of notices to the computed motion and mechanism of one layout. */
final class Occasions {
    private final Sound sound;
    private final Layout layout;
    private final Map<String, Set<Effects.Place>> taken = new HashMap<>();
    private final Set<String> ringless = new HashSet<>();
    private final Set<String> alwaysInMesh = new HashSet<>();
    private final List<String> speedRead;

    Occasions(Sound sound) {
        this.sound = sound;
        this.layout = sound.layout();
        for (String name : sound.gearNames()) {
            Set<Effects.Place> places = new HashSet<>();
            sound.gear(name).pushes().forEach(push -> places.add(new Effects.Place(push.member(), push.side())));
            taken.put(name, places);
            if (sound.gear(name).first().filter(push -> !hasRing(push)).isPresent()) {
                ringless.add(name);
            }
        }
        layout.meshes().forEach(mesh -> alwaysInMesh.addAll(List.of(mesh.first(), mesh.second())));
        speedRead = SpeedRead.from(layout);
    }

    /**
     * Whether a line of a fault holds.
     *
     * @param others the other faults of this world, the one asked about not among them
     */
    boolean holds(NoticeLine line, Told told, Situation situation, String gear, World world, List<Told> others) {
        Concerned about = told.concerned();
        return switch (line.when()) {
            case WHILE_IT_TURNS -> any(about.bodies(), world.moment(situation, gear)::turns);
            case WHILE_IT_TURNS_IN_MESH ->
                any(
                        about.bodies(),
                        body -> alwaysInMesh.contains(body)
                                && world.moment(situation, gear).turns(body));
            case WHILE_IT_TURNS_ON_ITS_SHAFT ->
                any(about.bodies(), world.moment(situation, gear)::turns) && rolls(told, world.moment(situation, gear));
            case WHILE_IT_ROLLS -> rolls(told, world.moment(situation, gear));
            case WHILE_IT_ROLLS_UNDER_LOAD ->
                rolls(told, world.moment(situation, gear))
                        && any(about.bodies(), world.moment(situation, gear)::carries);
            case WHILE_ITS_GEAR_TURNS_ON_IT ->
                about.gearOn(layout).isPresent() && rolls(told, world.moment(situation, gear));
            case WHILE_IT_CARRIES -> any(about.bodies(), world.moment(situation, gear)::carries);
            case WHILE_ITS_DRIVE_FLANK_CARRIES ->
                any(about.gears(), body -> world.moment(situation, gear).carriesOn(body, Flank.DRIVE));
            case WHILE_ITS_COAST_FLANK_CARRIES ->
                any(about.gears(), body -> world.moment(situation, gear).carriesOn(body, Flank.COAST));
            case WHILE_ITS_SIDES_DIFFER ->
                any(
                        about.differentials(),
                        id -> world.moment(situation, gear).sidesDiffer(layout.the(Differential.class, id)));
            case WHERE_WHEELS_ARE_TIED -> world.moment(situation, gear).wheelsAreTied();
            case IN_ITS_GEAR -> isGear(gear) && takes(gear, told, line) && world.works(gear);
            case AT_ITS_GEAR -> isGear(gear) && takes(gear, told, line);
            case IN_ANY_GEAR -> isGear(gear) && world.works(gear);
            case IN_A_GEAR_THROUGH_TEETH -> isGear(gear) && world.works(gear) && goesThroughTeeth(gear, world);
            case IN_A_GEAR_WITH_RING -> isGear(gear) && hasRing(gear, world) && world.works(gear);
            case IN_A_GEAR_WITHOUT_RING -> isGear(gear) && isRingless(gear, world) && world.works(gear);
            case ALWAYS -> true;
            case WHERE_IT_TAKES_THE_DRIVE -> isGear(gear) && takesTheDrive(told, gear, world, others);
            case WHERE_SPEED_IS_READ_STANDING ->
                isGear(gear)
                        && takesTheDrive(told, gear, world, others)
                        && any(speedRead, world.moment(Situation.SELECTED, gear)::turns);
            case WHERE_NEUTRAL_DRIVES -> !isGear(gear) && world.neutralDrives();
            case WHERE_IT_LOCKS -> world.locks(gear);
            case WHERE_TWO_CAN_MEET ->
                isGear(gear)
                        && sound.gear(gear).pushes().stream()
                                .anyMatch(push -> world.letGo().contains(push.rail()));
        };
    }

    private static boolean any(List<String> ids, Predicate<String> holds) {
        return ids.stream().anyMatch(holds);
    }

    private static boolean isGear(String gear) {
        return !gear.equals(World.NEUTRAL);
    }

    private static boolean rolls(Told told, Moment moment) {
        return told.concerned().pairs().stream().anyMatch(moment::turnUnlike);
    }

    private boolean goesThroughTeeth(String gear, World world) {
        Moment pulling = world.moment(Situation.PULLING, gear);
        return layout.all(Gear.class)
                .anyMatch(any -> pulling.carriesOn(any.id(), Flank.DRIVE) || pulling.carriesOn(any.id(), Flank.COAST));
    }

    private boolean takes(String gear, Told told, NoticeLine line) {
        Optional<Side> only =
                line.side().map(given -> given.in(told.fault().told())).flatMap(Sides::of);
        return told.served().stream()
                .anyMatch(served -> sides(only.or(served::side))
                        .anyMatch(side -> taken.get(gear).contains(new Effects.Place(served.member(), side))));
    }

    private static Stream<Side> sides(Optional<Side> only) {
        return only.map(Stream::of).orElseGet(() -> Stream.of(Side.values()));
    }

    private boolean hasRing(Box.Push push) {
        return layout.member(push.member())
                .at(push.side())
                .filter(engagement -> engagement instanceof Engagement.Couples couples
                        && couples.ring().isPresent())
                .isPresent();
    }

    private boolean hasRing(String gear, World world) {
        return sound.gear(gear).first().isPresent() && !isRingless(gear, world);
    }

    private boolean isRingless(String gear, World world) {
        return ringless.contains(gear)
                || taken.get(gear).stream().anyMatch(world.effects().ringless()::contains);
    }

    /** Of several faults, the one that takes the drive alone; where none does so alone, all that change anything. */
    private boolean takesTheDrive(Told told, String gear, World world, List<Told> others) {
        if (!world.isWithoutDrive(gear) || told.effects().changeNothing()) {
            return false;
        }
        return told.takes().contains(gear)
                || others.stream().noneMatch(other -> other.takes().contains(gear));
    }
}
