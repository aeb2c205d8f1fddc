package org.layshaft.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.layshaft.engine.exact.Fraction;
import org.layshaft.kb.failure.FailureMode;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.asking.FaultNaming;
import org.layshaft.web.desk.CanFail;
import org.layshaft.web.desk.Decimals;
import org.layshaft.web.desk.Turning;
import org.layshaft.web.desk.Wording;

/**
 * The part that is looked at.
 *
 * @param also its other names, with commas between
 * @param facts what is known of it
 * @param turning how it turns in what is drawn; null where it is no part that turns, or nothing is drawn in motion
 * @param failures the ways in which it can fail
 */
record PartView(
        String id,
        String name,
        String kind,
        String also,
        List<String> facts,
        String turning,
        List<FailureView> failures,
        String closeHref) {

    /**
     * A way in which the part can fail.
     *
     * @param supposed whether it is supposed already
     * @param href to the same with this supposed
     * @param told the same with more known of it
     */
    record FailureView(
            String name,
            String also,
            String common,
            String seenAt,
            String confirm,
            boolean supposed,
            String href,
            List<ToldView> told) {
        public boolean hasAlso() {
            return !also.isEmpty();
        }
    }

    /** What can be told of a failure, each value leading to the failure with it. */
    record ToldView(String what, List<LinkView> values) {}

    static PartView of(Part part, Scene scene, KnowledgeBase knowledge, FaultNaming words) {
        return new PartView(
                part.id(),
                scene.dialect().say(part.name()),
                part.kind().word().replace('-', ' '),
                String.join(", ", part.also()),
                facts(part, scene),
                running(part, scene),
                CanFail.of(knowledge, scene.layout(), part).stream()
                        .map(failure -> failure(failure, scene, words))
                        .toList(),
                scene.address().atNoPart().link());
    }

    private static List<String> facts(Part part, Scene scene) {
        List<String> facts = new ArrayList<>();
        if (part instanceof Gear gear) {
            facts.add(gear.teeth() + " teeth");
            facts.add(
                    gear.moduleMm().isPresent()
                            ? "module " + gear.moduleMm().getAsDouble() + " mm"
                            : "module not told");
            facts.add(gear.helixDeg() == 0 ? "straight cut" : "helix angle " + gear.helixDeg() + "°");
            facts.add(seat(gear) + scene.called(gear.carrier()));
        }
        facts.addAll(Dialect.both(part.name()));
        return facts;
    }

    /** How it turns and what torque goes through it, against the input's and in rpm and N·m where these are told. */
    private static String running(Part part, Scene scene) {
        List<String> says = new ArrayList<>();
        Optional.ofNullable(turning(part, scene)).ifPresent(says::add);
        Running told = scene.running();
        scene.motion()
                .flatMap(motion -> motion.speedOf(part.id()))
                .filter(speed -> !speed.isZero())
                .flatMap(speed -> told.rpm().map(speed::times))
                .ifPresent(rpm -> says.add(Decimals.plain(rpm.absolute(), 1) + " rpm"));
        scene.torques()
                .flatMap(torques -> torques.through(part.id()))
                .filter(torque -> !torque.isZero())
                .ifPresent(torque -> says.add("torque through it %s times the input's%s"
                        .formatted(
                                Decimals.three(torque),
                                told.nm()
                                        .map(nm -> ", " + Decimals.plain(torque.times(nm), 1) + " N·m")
                                        .orElse(""))));
        return says.isEmpty() ? null : String.join("; ", says);
    }

    private static String seat(Gear gear) {
        return switch (gear.seat()) {
            case FIXED -> "fixed on the ";
            case FREE -> "free on the ";
            case SLIDING -> "slides on the ";
            case RIM -> "cut on the ";
        };
    }

    private static String turning(Part part, Scene scene) {
        return scene.turning().stream()
                .filter(turning -> turning.part().equals(part.id()))
                .findFirst()
                .map(PartView::turning)
                .orElse(null);
    }

    private static String turning(Turning turning) {
        String way = Wording.of(turning.sense());
        return turning.speed()
                .filter(speed -> !speed.isZero())
                .map(Fraction::absolute)
                .map(NumberView::of)
                .map(speed -> speed.whole()
                        ? "turns %s for one of the input, %s".formatted(speed.exact(), way)
                        : "turns %s (%s) for one of the input, %s".formatted(speed.decimal(), speed.exact(), way))
                .orElse(way);
    }

    private static FailureView failure(CanFail failure, Scene scene, FaultNaming words) {
        FailureMode mode = failure.mode();
        Fault fault = failure.fault();
        List<ToldView> told = new ArrayList<>();
        for (Map.Entry<String, List<String>> entry : failure.tellable().entrySet()) {
            told.add(new ToldView(
                    words.asked(entry.getKey()),
                    entry.getValue().stream()
                            .map(value -> LinkView.to(
                                    words.told(fault, entry.getKey(), value),
                                    supposing(fault.with(entry.getKey(), value), scene)))
                            .toList()));
        }
        return new FailureView(
                mode.name(),
                String.join(", ", mode.also()),
                Wording.of(mode.common()),
                Wording.of(mode.seenAt()),
                mode.confirm(),
                scene.faults().stream().anyMatch(each -> isSame(each, fault)),
                supposing(fault, scene).link(),
                told);
    }

    /** The same with this fault, in the place of one of the same part and mode. */
    private static Address supposing(Fault fault, Scene scene) {
        List<Fault> faults = new ArrayList<>(scene.faults());
        faults.removeIf(each -> isSame(each, fault));
        faults.add(fault);
        return scene.address().supposing(faults);
    }

    private static boolean isSame(Fault one, Fault other) {
        return one.part().equals(other.part()) && one.mode().equals(other.mode());
    }

    public boolean hasAlso() {
        return !also.isEmpty();
    }

    public boolean hasFacts() {
        return !facts.isEmpty();
    }

    public boolean hasFailures() {
        return !failures.isEmpty();
    }
}
